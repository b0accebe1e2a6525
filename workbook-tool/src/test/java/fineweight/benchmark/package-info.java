/**
 * How long filling takes beside other ways of doing the same. Not part of the tests; started with
 * {@code mvn -B -pl workbook-tool -am test -Dtest=BenchmarkRun
 * -Dsurefire.failIfNoSpecifiedTests=false}.
 */
package fineweight.benchmark;
