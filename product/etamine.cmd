@echo off
rem The console: product\etamine [--book FILE] VERB [ARGUMENTS] [--json] [--quiet]. Builds what is missing first.
setlocal
call "%~dp0common.cmd" build || exit /b 70
call "%~dp0common.cmd" run console %*
exit /b %errorlevel%
