@echo off
rem Opens the window on the demo kitchen, or on the book that "--book FILE" names; "--console" does the main job on the
rem console instead.
setlocal
set "front=window"
set "book="
:next
if "%~1"=="" goto ready
if "%~1"=="--console" (
    set "front=console"
    shift
    goto next
)
if "%~1"=="--book" (
    set "book=%~2"
    shift
    shift
    goto next
)
echo etamine: start takes --console and --book FILE; for verbs use product\etamine 1>&2
exit /b 2

:ready
call "%~dp0common.cmd" build || exit /b 70
set "demo=%~dp0target\demo"
if not exist "%demo%" mkdir "%demo%"
if defined book goto open
set "book=%demo%\ninth-lantern.etamine"
if exist "%book%" goto open
call "%~dp0common.cmd" run console --book "%book%" --quiet demo || exit /b 70

:open
if not "%book:~0,5%"=="jdbc:" for %%F in ("%book%") do set "book=%%~fF"
if "%front%"=="window" (
    call "%~dp0common.cmd" run window --book "%book%"
    exit /b
)
call :step cost || exit /b
call :step stock || exit /b
call :step plan || exit /b
cd /d "%demo%"
call :step order --issue || exit /b
echo The orders are in %demo%\orders:
dir /b /s "%demo%\orders\*.pdf" "%demo%\orders\*.csv"
exit /b 0

rem A status of 1 means that there is something to look at, which is no reason to stop.
:step
echo.
call "%~dp0common.cmd" run console --book "%book%" %*
if %errorlevel% gtr 1 exit /b %errorlevel%
exit /b 0
