@echo off
rem Starts Shinline; builds it first when there is no jar or a source is newer than it.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%ui-cli\target\shinline.jar"
set "BUILT=%HOME_DIR%ui-cli\target\.built"
set "LOCK=%HOME_DIR%.build-lock"
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"

"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
  echo shinline: Java is missing. Install a JDK, version 17 or newer, then run this again. 1>&2
  exit /b 1
)

rem Dots stand for the quotes around the version, which cmd would count as its own.
"%JAVA%" -version 2>&1 | findstr /r /c:"version .1[7-9]" /c:"version .[2-9][0-9]" >nul
if errorlevel 1 (
  echo shinline: this Java is too old. Install a JDK, version 17 or newer. 1>&2
  exit /b 1
)

call :stale
if errorlevel 1 goto run

where javac >nul 2>&1
if errorlevel 1 if not exist "%JAVA_HOME%\bin\javac.exe" (
  echo shinline: this Java runs programs but cannot build them. Install the JDK, version 17 or newer. 1>&2
  exit /b 1
)
where mvn >nul 2>&1
if errorlevel 1 (
  echo shinline: Maven is missing. Install Maven, version 3.8 or newer, then run this again. 1>&2
  exit /b 1
)
where npm >nul 2>&1
if errorlevel 1 (
  echo shinline: npm is missing; it brings the pose model. Install Node.js with npm. 1>&2
  exit /b 1
)

set TRIES=0
:lock
mkdir "%LOCK%" >nul 2>&1
if not errorlevel 1 goto build
set /a TRIES+=1
if %TRIES%==1 echo shinline: waiting for another run that is building ... 1>&2
if %TRIES% geq 900 (
  echo shinline: the folder "%LOCK%" was left by a run that was stopped. Remove it. 1>&2
  exit /b 1
)
rem A second's wait; timeout would refuse when its input is not a keyboard.
ping -n 2 127.0.0.1 >nul
goto lock

:build
call :stale
if errorlevel 1 goto unlock
echo shinline: building, which takes a few minutes the first time ... 1>&2
rem The mark carries the time the build began: a file saved during the build counts as newer.
type nul >"%LOCK%\started"
pushd "%HOME_DIR%"
call mvn -q -B -DskipTests package 1>&2
set "CODE=%errorlevel%"
popd
if not "%CODE%"=="0" (
  rmdir /s /q "%LOCK%"
  echo shinline: the build failed; the lines above say why. The first build needs the network. 1>&2
  exit /b 1
)
move /y "%LOCK%\started" "%BUILT%" >nul
:unlock
rmdir /s /q "%LOCK%"

:run
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -jar "%JAR%" %*
exit /b %errorlevel%

rem 0 when a build is needed, 1 when the jar is newer than every source.
:stale
if not exist "%JAR%" exit /b 0
if not exist "%BUILT%" exit /b 0
powershell -NoProfile -Command "$b = (Get-Item -LiteralPath $env:BUILT).LastWriteTimeUtc; $h = $env:HOME_DIR; $new = @('.mvn','vision','metrics','ui-cli') | ForEach-Object { Get-ChildItem -LiteralPath (Join-Path $h $_) -Recurse -File } | Where-Object { $_.FullName -notmatch '\\(target|node_modules|src\\test)\\' -and $_.LastWriteTimeUtc -gt $b } | Select-Object -First 1; $pom = (Get-Item -LiteralPath (Join-Path $h 'pom.xml')).LastWriteTimeUtc -gt $b; if ($new -or $pom) { exit 0 } else { exit 1 }"
exit /b %errorlevel%
