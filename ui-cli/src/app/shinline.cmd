@echo off
rem Starts Shinline with the Java of this computer, which must be 17 or newer.
setlocal
set "HOME_DIR=%~dp0"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo shinline: Java is missing. Install Java, version 17 or newer, then run this again. 1>&2
  exit /b 1
)
rem Dots stand for the quotes around the version, which cmd would count as its own.
"%JAVA%" -version 2>&1 | findstr /r /c:"version .1[7-9]" /c:"version .[2-9][0-9]" >nul
if errorlevel 1 (
  echo shinline: this Java is too old. Install Java, version 17 or newer. 1>&2
  exit /b 1
)
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xms32m -Xmn16m -Djdk.util.jar.enableMultiRelease=false -cp "%HOME_DIR%lib\*" shinline.cli.Main %*
exit /b %errorlevel%
