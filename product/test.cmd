@echo off
rem Runs every test and checks the formatting. Further arguments go to Maven.
setlocal
call mvn -B -ntp -f "%~dp0..\pom.xml" verify %* || exit /b 70
call mvn -B -ntp -q -f "%~dp0..\pom.xml" spotless:check || exit /b 70
