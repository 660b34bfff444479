@echo off
rem Starts Hobside on Windows. It needs a terminal of the Unix kind, such as the one of the Windows Subsystem for Linux;
rem without a screen (totals, script, check, foods ...) it works in any window.
setlocal
set "home=%~dp0"
set "java=%home%runtime\bin\java.exe"
if exist "%java%" goto start
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto start
set "java=java"
:start
"%java%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx64m -jar "%home%hobside.jar" %*
exit /b %ERRORLEVEL%
