@echo off
rem Shared by the scripts beside it: "common.cmd build" builds what is missing, "common.cmd run MODE ..." runs it.
set "product=%~dp0"
set "app=%product%target\app"
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java"
if "%~1"=="build" goto build
if "%~1"=="run" goto run
exit /b 2

:build
powershell -NoProfile -Command "$b = Get-Item -ErrorAction SilentlyContinue '%app%\built'; if (-not $b) { exit 1 }; $n = Get-ChildItem -Recurse -File '%product%..\features', '%product%..\demo-data', '%product%src', '%product%..\bundles\*\src', '%product%..\bundles\*\pom.xml', '%product%..\pom.xml' | Where-Object { $_.LastWriteTime -gt $b.LastWriteTime } | Select-Object -First 1; if ($n) { exit 1 } else { exit 0 }"
if not errorlevel 1 exit /b 0
echo etamine: building (the first time this takes a few minutes) 1>&2
if not exist "%product%target" mkdir "%product%target"
call mvn -B -q -f "%product%..\pom.xml" -pl product -am -Dmaven.test.skip=true package > "%product%target\build.log" 2>&1
if errorlevel 1 (
    type "%product%target\build.log" 1>&2
    exit /b 70
)
type nul > "%app%\built"
exit /b 0

:run
shift
set "arguments="
:more
if "%~1"=="" goto go
set arguments=%arguments% %1
shift
goto more
:go
set "features="
if defined ETAMINE_FEATURES set "features=-Detamine.features=%ETAMINE_FEATURES%"
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xms24m -Xshare:auto -Xlog:disable -Xlog:all=error:stderr -Djava.awt.headless=true -Dfile.encoding=UTF-8 "-Detamine.app=%app%" %features% %paint% -cp "%app%\launcher\etamine.launcher.jar;%app%\launcher\framework.jar" etamine.launcher.Launcher %arguments%
exit /b %errorlevel%
