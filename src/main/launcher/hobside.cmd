@echo off
rem Starts Hobside on Windows. The screens need a terminal of the Unix kind, such as the one of the Windows Subsystem for
rem Linux; without a screen (totals, script, check, foods ...) it works in any window.
setlocal
set "home=%~dp0"
set "lean=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmx64m"
rem The folder on the stick is the kitchen too, unless another one was named.
if not defined HOBSIDE_KITCHEN set "HOBSIDE_KITCHEN=%home%."
rem A folder that was made on Windows has the program inside its Java.
if not exist "%home%runtime\bin\java.exe" goto other
"%home%runtime\bin\java.exe" %lean% -XX:SharedArchiveFile="%home%runtime\lib\hobside.jsa" hobside.Hobside %*
exit /b %ERRORLEVEL%
:other
if exist "%home%hobside.jar" goto jar
echo This folder was made for another kind of machine. Take one that was made on Windows, or ask whoever made this one for>&2
echo hobside.jar, put it here, and have Java 17 installed.>&2
exit /b 2
:jar
set "java=java"
if defined JAVA_HOME set "java=%JAVA_HOME%\bin\java.exe"
"%java%" %lean% -jar "%home%hobside.jar" %*
exit /b %ERRORLEVEL%
