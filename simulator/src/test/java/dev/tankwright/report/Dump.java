package dev.tankwright.report;
import java.nio.file.Path;
import java.util.List;
final class Dump { public static void main(String[] a) { 
 for (int i=0;i<Integer.parseInt(a[1]);i++){ long t=System.nanoTime(); byte[] b=HtmlReport.render(R, SampleRun.events()); System.out.println("render ms "+(System.nanoTime()-t)/1e6+" bytes "+b.length);} 
 new RunFolder(Path.of(a[0])).write(R, SampleRun.events(), List.of("{\"a\":1}".getBytes()));
 System.out.print(ConsoleSummary.of(R, SampleRun.events(), false)); }
 static final dev.tankwright.scenario.RunResult R = SampleRun.of(); }
