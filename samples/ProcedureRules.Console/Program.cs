using ProcedureRules.ConsoleHost;

return Host.Run(args, HostConsole.ForTerminal());
