using System.Diagnostics;
using System.Globalization;
using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;

namespace ProcedureRules.Benchmarks;

/// <summary>The first time in a process: everything is still to be compiled, by the library and by the run time.</summary>
internal static class ColdStart
{
    public static int Run(string what, string rules)
    {
        if (!int.TryParse(rules, NumberStyles.None, CultureInfo.InvariantCulture, out var count) || what is not ("ours" or "stock"))
        {
            Console.Error.WriteLine("cold ours|stock NUMBER_OF_RULES");
            return 1;
        }
        var source = new PackGenerator(count);
        var watch = Stopwatch.StartNew();
        var (compiled, done) = what == "ours" ? Ours(source, watch) : Stock(source, watch);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what} {count}: compiled after {compiled.TotalMilliseconds:F0} ms, first session done after {done.TotalMilliseconds:F0} ms"));
        return 0;
    }

    private static (TimeSpan Compiled, TimeSpan Done) Ours(PackGenerator source, Stopwatch watch)
    {
        var world = new GeneratedWorld(source);
        var compiled = watch.Elapsed;
        _ = BeliefNetwork.Build(new InferenceSession(world.Rules).Infer(world.Situation), new DiagnosticBag());
        return (compiled, watch.Elapsed);
    }

    private static (TimeSpan Compiled, TimeSpan Done) Stock(PackGenerator source, Stopwatch watch)
    {
        var factory = StockRules.Compile(source);
        var compiled = watch.Elapsed;
        _ = StockRules.Run(factory, StockRules.Facts(source));
        return (compiled, watch.Elapsed);
    }
}
