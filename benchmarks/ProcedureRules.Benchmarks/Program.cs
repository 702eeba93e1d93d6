ProcedureRules.Benchmarks.Probe.Run(int.Parse(args[0]), args[1]);
