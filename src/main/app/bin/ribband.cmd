@echo off
rem Starts Ribband from wherever this file stands.
setlocal DisableDelayedExpansion
set "app=%~dp0.."

rem A package brings its own Java, with the program linked into it.
set "java=%app%\java\bin\java.exe"
set program=-m ribband/ribband.cli.Main
if exist "%java%" goto found
set program=-jar "%app%\lib\ribband.jar"
set "java=%JAVA_HOME%\bin\java.exe"
if exist "%java%" goto found
set "java=java.exe"
where /q java.exe
if not errorlevel 1 goto found
echo ribband: no Java found; install a Java 17 or newer, or set JAVA_HOME 1>&2
exit /b 3

:found
rem Most runs end before the second compiler pays; a watch goes on.
set tiers=1
if "%~1"=="watch" set tiers=4

rem Pictures take what memory they may; RIBBAND_HEAP=2g lets very large ones through.
set heap=640m
if defined RIBBAND_HEAP set "heap=%RIBBAND_HEAP%"

rem Ribband writes UTF-8; the console is told so, and set back afterwards.
for /f "tokens=2 delims=:" %%p in ('chcp') do set "page=%%p"
chcp 65001 >nul
"%java%" "@%app%\lib\java-options" "-XX:SharedArchiveFile=%app%\lib\ribband.jsa" -XX:TieredStopAtLevel=%tiers% -Xmx%heap% %program% %*
set code=%ERRORLEVEL%
rem Some languages of Windows end the number with a full stop.
if defined page chcp %page:.=% >nul
exit /b %code%
