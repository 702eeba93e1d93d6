using System.Diagnostics;
using System.Runtime.InteropServices;
using ProcedureRules.Beliefs;
using ProcedureRules.Diagnostics;
using ProcedureRules.Inference;

namespace ProcedureRules.Benchmarks;
internal static partial class Probe
{
    [DllImport("libc")] private static extern int clock_gettime(int id, out TS ts);
    private struct TS { public long S, N; }
    private static double Cpu() { clock_gettime(3, out var t); return t.S * 1e3 + t.N / 1e6; }
    public static void Measure(string what, int times, Action a)
    {
        var all = new List<double>();
        var c = Cpu(); a(); var first = Cpu() - c;
        for (var i = 0; i < times; i++) { c = Cpu(); a(); all.Add(Cpu() - c); }
        all.Sort();
        Console.WriteLine($"{what,-16} first {first,8:F2}  min {all[0],7:F2}  median {all[all.Count / 2],7:F2} cpu ms");
    }
    public static void Run(int n, string what)
    {
        var src = new PackGenerator(n);
        var w = new GeneratedWorld(n);
        if (what.Contains('i')) Measure("infer", 200, () => new InferenceSession(w.Rules).Infer(w.Situation));
        var r = new InferenceSession(w.Rules).Infer(w.Situation);
        Console.WriteLine(r.Records.Count);
        if (what.Contains('p'))
        {
            var idx = RuleIndex.Of(w.Rules);
            double[] best = [9e9, 9e9, 9e9, 9e9, 9e9, 9e9];
            for (var i = 0; i < 300; i++)
            {
                var c = Cpu(); var k = 0;
                void Lap() { var d = Cpu(); best[k] = Math.Min(best[k], d - c); k++; c = Cpu(); }
                var ws = new Workspace(idx); ws.Workload.Begin(1000000, default);
                var s = SessionNetwork.CreateSession(ws);
                Lap();
                var sup = SituationInputs.Of(w.Situation).Select(a => new Support(ws.Nodes.Intern(a))).ToList();
                Lap();
                s.InsertAll(sup);
                Lap();
                s.Fire();
                Lap();
                foreach (var x in s.PropagateLinked()) { }
                Lap();
                var st = ws.Standing(); var recs = new Record[st.Count]; for (var q = 0; q < recs.Length; q++) recs[q] = st[q].Record!;
                Array.Sort(recs, new RecordOrder(idx));
                Lap();
            }
            Console.WriteLine("create {0:F3} inputs {1:F3} insert {2:F3} fire {3:F3} prop {4:F3} sort {5:F3}", best.Select(b => (object)b).ToArray());
            // matcher alone
            double m = 9e9;
            for (var i = 0; i < 300; i++)
            {
                var ws = new Workspace(idx); ws.Workload.Begin(1000000, default);
                var nodes = SituationInputs.Of(w.Situation).Select(a => ws.Nodes.Intern(a)).ToList();
                var c = Cpu(); ws.Matcher.Add(nodes); m = Math.Min(m, Cpu() - c);
            }
            Console.WriteLine($"matcher alone {m:F3}");
        }
        if (what.Contains('b')) Measure("beliefs", 100, () => BeliefNetwork.Build(r, new DiagnosticBag()));
        if (what.Contains('c')) Measure("load+compile", 10, () => w.Compile());
        if (what.Contains('s'))
        {
            var f = StockRules.Facts(src);
            NRules.ISessionFactory stock = null!;
            Measure("stock compile", 1, () => stock = StockRules.Compile(src));
            Measure("stock run", 100, () => StockRules.Run(stock, f));
            Console.WriteLine(StockRules.Run(stock, f));
        }
    }
}
