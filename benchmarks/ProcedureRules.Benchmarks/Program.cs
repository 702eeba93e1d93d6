using BenchmarkDotNet.Running;
using ProcedureRules.Benchmarks;

// "cold" measures a first run, which BenchmarkDotNet cannot: it warms up.
if (args is ["cold", var what, var rules]) return ColdStart.Run(what, rules);

// In process: the build of the repository (lock files, house rules) is not one to be generated again for each run.
var summaries = BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run([.. args, "--inProcess"]).ToList();

// A run that found nothing to measure, or in which something failed, must not pass for a good one.
var reports = summaries.SelectMany(summary => summary.Reports).ToList();
return args.Contains("--list") || (reports.Count > 0 && reports.TrueForAll(report => report.Success)) ? 0 : 1;
