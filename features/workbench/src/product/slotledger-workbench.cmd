@echo off
rem Slotledger's workbench. Needs Java 17 or newer: JAVA_HOME, or java on the path.
setlocal
set "JAVA=javaw"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\javaw.exe"
start "" /b "%JAVA%" %SLOTLEDGER_JAVA_OPTIONS% -jar "%~dp0plugins\slotledger.start.jar" %*
