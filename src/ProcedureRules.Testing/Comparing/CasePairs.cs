using ProcedureRules.Diagnostics;
using ProcedureRules.Facts;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Generating;
using ProcedureRules.Testing.Scenarios;

namespace ProcedureRules.Testing.Comparing;

/// <summary>The same vehicles with the same jobs for two versions of packs: each text is read twice, since names mean what the packs say.</summary>
internal sealed class CasePairs(ProcedureEngine before, ProcedureEngine after)
{
    private readonly List<(ComparedCase Before, ComparedCase After)> _both = [];

    /// <summary>What both versions can read.</summary>
    public IReadOnlyList<(ComparedCase Before, ComparedCase After)> Both => _both;

    /// <summary>What only the version before can read, with why.</summary>
    public List<(string Name, Diagnostic Why)> OnlyBefore { get; } = [];

    /// <summary>What only the version after can read.</summary>
    public List<string> OnlyAfter { get; } = [];

    /// <summary>Adds scenarios of both versions; where both have one of a name, the one after is meant.</summary>
    public void AddScenarios(IReadOnlyList<SourceFile> filesBefore, IReadOnlyList<SourceFile> filesAfter)
    {
        var (news, known) = (Read(after, filesAfter, out _), Read(before, filesAfter, out _));
        foreach (var (name, now) in news)
        {
            if (known.TryGetValue(name, out var old)) _both.Add((old, now));
            else OnlyAfter.Add(name);
        }

        foreach (var file in filesBefore)
        {
            var (olds, still) = (Read(before, [file], out _), Read(after, [file], out var mistakes));
            foreach (var (name, old) in olds.Where(old => !news.ContainsKey(old.Key)))
            {
                if (still.TryGetValue(name, out var now)) _both.Add((old, now));
                else if (mistakes.FirstOrDefault(mistake => mistake.Severity == Severity.Error) is { } why) OnlyBefore.Add((name, why));
            }
        }
    }

    /// <summary>Adds generated vehicles for each job that both versions know.</summary>
    public void AddGenerated(int count, int seed)
    {
        foreach (var job in after.Vocabulary.Jobs.Keys.Where(before.Vocabulary.Jobs.ContainsKey).Order(StringComparer.Ordinal))
            for (var number = 0; number < count; number++)
                AddGenerated(GeneratedVehicle.Make(after, unchecked((seed * 100_003) + number) & int.MaxValue, job).Situation, $"generated: {job}, {number + 1}");
    }

    private void AddGenerated(Situation made, string name)
    {
        var (sheet, order) = (new SourceFile(name, SheetWriter.WriteVehicle(made, UnitSystem.Si)), new SourceFile(name, SheetWriter.WriteWorkOrder(made, name, "it")));
        if (Read(after, sheet, order) is not { } now) return;
        if (Read(before, sheet, order) is { } old) _both.Add((new ComparedCase(name, old, Once), new ComparedCase(name, now, Once)));
        else OnlyAfter.Add(name);
    }

    private static IReadOnlyList<Turn> Once { get; } = [new Turn([], [], [])];

    private static Situation? Read(ProcedureEngine engine, SourceFile sheet, SourceFile order)
    {
        var bag = new DiagnosticBag();
        var read = new SheetReader(engine.Vocabulary, engine.Archetypes).Read(sheet, order, bag);
        return bag.HasErrors ? null : read;
    }

    private static Dictionary<string, ComparedCase> Read(ProcedureEngine engine, IReadOnlyList<SourceFile> files, out IReadOnlyList<Diagnostic> mistakes)
    {
        var set = ScenarioSet.ReadVehicles(engine, files);
        mistakes = set.Diagnostics;
        return set.Cases.DistinctBy(one => one.Name).ToDictionary(one => one.Name, one => new ComparedCase(one.Name, one.Situation, one.Turns), StringComparer.Ordinal);
    }
}
