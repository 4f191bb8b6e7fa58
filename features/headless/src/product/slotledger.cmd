@echo off
rem Slotledger's command line. Needs Java 17 or newer: JAVA_HOME, or java on the path.
setlocal
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java.exe"

rem A plan computes for long and gains by the optimising compiler; any other command is over before that pays.
set "SPEED=-XX:TieredStopAtLevel=1 -XX:+UseSerialGC"
if /i "%~1"=="plan" set "SPEED="
if /i "%~1"=="curve" set "SPEED="
if /i "%~1"=="alternatives" set "SPEED="

"%JAVA%" %SPEED% %SLOTLEDGER_JAVA_OPTIONS% -jar "%~dp0plugins\slotledger.start.jar" %*
exit /b %ERRORLEVEL%
