@echo off
rem Starts Shinline; builds it first when there is no jar or a source is newer than it.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%ui-cli\target\shinline.jar"
set "BUILT=%HOME_DIR%ui-cli\target\.built"
set "LOCK=%HOME_DIR%.build-lock"
set "STARTED=%HOME_DIR%.build-started"
set "TRY=%HOME_DIR%.build-try-%RANDOM%"
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

rem A folder of that name was left by an older version of this script.
if exist "%LOCK%\" rmdir /s /q "%LOCK%"
call :touch "%TRY%" 2>nul
if not exist "%TRY%" (
  echo shinline: Shinline must be built, but "%HOME_DIR%" may not be written to. 1>&2
  exit /b 1
)
del "%TRY%" 2>nul

rem Another run builds as long as it holds the lock open for writing. Windows lets it go when its
rem owner dies, however it dies. What is printed there goes into the lock; words go to the error stream.
set TRIES=0
:lock
set "ALONE="
call :touch "%LOCK%" 2>nul && call :build >"%LOCK%"
if defined ALONE goto built
set /a TRIES+=1
if %TRIES%==1 echo shinline: waiting for another run that is building ... 1>&2
rem A second's wait; timeout would refuse when its input is not a keyboard.
ping -n 2 127.0.0.1 >nul
goto lock

:built
if not "%CODE%"=="0" exit /b 1

:run
rem Classes as the build wrote them down; Java takes them for this jar and this Java only, and need
rem not say so.
set SHARED=
if exist "%HOME_DIR%ui-cli\target\shared-classes.jsa" set SHARED=-XX:SharedArchiveFile="%HOME_DIR%ui-cli\target\shared-classes.jsa" -Xlog:disable
"%JAVA%" -XX:+UseSerialGC -XX:TieredStopAtLevel=1 -Xshare:auto -Xms32m -Xmn16m -Djdk.util.jar.enableMultiRelease=false %SHARED% -jar "%JAR%" %*
exit /b %errorlevel%

rem Opens a file for writing, in a place of its own so that the complaint goes where the caller wants.
:touch
type nul >%1
exit /b %errorlevel%

rem Builds, unless the run that was waited for has done so.
:build
set "ALONE=yes"
set "CODE=0"
call :stale
if errorlevel 1 exit /b 0
echo shinline: building, which takes a few minutes the first time ... 1>&2
rem The mark carries the time the build began: a file saved during the build counts as newer.
type nul >"%STARTED%"
pushd "%HOME_DIR%"
call mvn -q -B -DskipTests package 1>&2
set "CODE=%errorlevel%"
popd
if "%CODE%"=="0" (
  move /y "%STARTED%" "%BUILT%" >nul
) else (
  del "%STARTED%"
  echo shinline: the build failed; the lines above say why. The first build needs the network. 1>&2
)
exit /b 0

rem 0 when a build is needed, 1 when the jar is newer than every source.
:stale
if not exist "%JAR%" exit /b 0
if not exist "%BUILT%" exit /b 0
powershell -NoProfile -Command "$b = (Get-Item -LiteralPath $env:BUILT).LastWriteTimeUtc; $h = $env:HOME_DIR; $new = @('.mvn','vision','metrics','ui-cli') | ForEach-Object { Get-ChildItem -LiteralPath (Join-Path $h $_) -Recurse -File } | Where-Object { $_.FullName -notmatch '\\(target|node_modules|src\\test)\\' -and $_.LastWriteTimeUtc -gt $b } | Select-Object -First 1; $pom = (Get-Item -LiteralPath (Join-Path $h 'pom.xml')).LastWriteTimeUtc -gt $b; if ($new -or $pom) { exit 0 } else { exit 1 }"
exit /b %errorlevel%
