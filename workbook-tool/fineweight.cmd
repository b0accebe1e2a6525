@echo off
rem Starts Fineweight on Windows, as the script "fineweight" beside it does elsewhere. Builds it
rem first if that was never done; "set FINEWEIGHT_BUILD=1" asks for a build.
setlocal EnableExtensions DisableDelayedExpansion
set "TOOL=%~dp0"
set "TOOL=%TOOL:~0,-1%"
for %%I in ("%TOOL%\..") do set "ROOT=%%~fI"
set "MADE=%TOOL%\target\start"

set "JAVA="
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if not defined JAVA for %%I in (java.exe) do set "JAVA=%%~$PATH:I"
if not defined JAVA (
  echo Fineweight needs Java 17 or later and found none. Install a JDK and run this again. 1>&2
  exit /b 69
)

if "%FINEWEIGHT_BUILD%"=="1" goto check
if exist "%MADE%\built" goto start

:check
set "VERSION="
for /f "tokens=3" %%V in ('""%JAVA%" -version 2^>^&1" ^| findstr /i /c:" version "') do if not defined VERSION set "VERSION=%%~V"
if not defined VERSION (
  echo Fineweight needs Java 17 or later; "%JAVA%" does not tell its version. 1>&2
  exit /b 69
)
for /f "tokens=1,2 delims=.-+" %%A in ("%VERSION%") do (
  set "MAJOR=%%A"
  if "%%A"=="1" set "MAJOR=%%B"
)
if %MAJOR% LSS 17 (
  echo Fineweight needs Java 17 or later; "%JAVA%" is version %VERSION%. Install a newer JDK or set JAVA_HOME. 1>&2
  exit /b 69
)
where mvn >nul 2>nul
if errorlevel 1 (
  echo Fineweight is built on first use and needs Maven 3.8 or later for that, but found no mvn. Install it and run this again. 1>&2
  exit /b 69
)
echo Building Fineweight; this happens once and takes a minute or two. 1>&2
if exist "%MADE%" rmdir /s /q "%MADE%"
mkdir "%MADE%"
pushd "%ROOT%"
call mvn -q -B -ntp -Dmaven.test.skip=true -pl workbook-tool -am package >"%MADE%\log" 2>&1 <nul
if errorlevel 1 (
  popd
  type "%MADE%\log" 1>&2
  echo The build failed; the lines above say why. 1>&2
  exit /b 69
)
popd
type nul >"%MADE%\built"

:start
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xmn24m -cp "%TOOL%\target\*;%TOOL%\target\lib\*" fineweight.tool.Main %*
exit /b %ERRORLEVEL%
