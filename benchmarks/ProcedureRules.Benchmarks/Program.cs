using BenchmarkDotNet.Running;
using ProcedureRules.Benchmarks;

// "cold" measures a first run, which BenchmarkDotNet cannot: it warms up.
if (args is ["cold", var what, var rules]) return ColdStart.Run(what, rules);

// In process: the build of the repository (lock files, house rules) is not one to be generated again for each run.
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run([.. args, "--inProcess"]);
return 0;
