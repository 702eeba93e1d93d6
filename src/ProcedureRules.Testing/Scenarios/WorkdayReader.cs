using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Scheduling;
using ProcedureRules.Testing.Expectations;
using ProcedureRules.Yaml;

namespace ProcedureRules.Testing.Scenarios;

/// <summary>Reads the shop of a scenario and when its job begins.</summary>
internal sealed class WorkdayReader(Vocabulary vocabulary, DiagnosticBag bag)
{
    /// <summary>What a scenario says of them; what it leaves out is usual.</summary>
    /// <param name="root">The scenario.</param>
    /// <param name="folder">The folder of its file.</param>
    public Workday Read(YamlMapping root, string folder) => Workday.Usual with
    {
        Shop = Shop(root, folder) ?? Workshop.Usual,
        Start = root.Scalar("start") is { } start ? Start(start) : Workday.Usual.Start,
    };

    private Workshop? Shop(YamlMapping root, string folder)
    {
        if (root.Value("shop") is YamlMapping inline) return new WorkshopReader(vocabulary, bag).Read(inline);
        if (root.Text("shop") is not { } path) return null;
        var read = ShopFile.Read(Path.Combine(folder, path), vocabulary);
        bag.AddRange(read.Diagnostics);
        return read.Shop;
    }

    private DateTime Start(YamlScalar written)
    {
        if (JobStart.Read(written.Text) is { } start) return start;
        bag.Add(Messages.StartForm(written.Span, written.Text));
        return Workday.Usual.Start;
    }
}
