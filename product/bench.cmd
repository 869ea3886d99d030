@echo off
rem Measures the program: product\bench [NAME...]; without a name all of it.
setlocal
call "%~dp0common.cmd" build || exit /b 70
set "product=%~dp0"
set "classes=%product%target\bench"
if not exist "%classes%" mkdir "%classes%"
set "tools="
if defined JAVA_HOME set "tools=%JAVA_HOME%\bin\"
dir /b /s "%product%src\bench\java\*.java" > "%classes%\sources.txt"
"%tools%javac" -d "%classes%" -cp "%product%target\app\bundles\*" "@%classes%\sources.txt" || exit /b 70
"%tools%java" -Djava.awt.headless=true "-Detamine.product=%product:~0,-1%" -cp "%classes%;%product%target\app\bundles\*" etamine.bench.Benches %*
exit /b %errorlevel%
