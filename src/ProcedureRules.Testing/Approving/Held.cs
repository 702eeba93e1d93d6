using ProcedureRules.Diagnostics;

namespace ProcedureRules.Testing.Approving;

/// <summary>Holds cases to the plans that are approved for them.</summary>
internal static class Held
{
    /// <summary>The cases in their order, each with its approved plans; a plan without a case is complained about, once for each name.</summary>
    public static IReadOnlyList<ScenarioCase> To(IReadOnlyList<SourceFile> files, IReadOnlyList<ScenarioCase> cases, DiagnosticBag bag)
    {
        if (files.Count == 0) return cases;
        var sections = files.ToDictionary(file => file.Path, file => ApprovedFile.Read(file, bag), StringComparer.Ordinal);
        var used = new HashSet<ApprovedSection>(ReferenceEqualityComparer.Instance);
        var held = new List<ScenarioCase>();
        foreach (var one in cases)
        {
            var approved = new Dictionary<int, ApprovedSection>();
            if (one.Span.File is { } file && sections.TryGetValue(ApprovedFile.PathFor(file.Path), out var own))
                for (var turn = 0; turn < one.Turns.Count; turn++)
                    if (own.TryGetValue(ApprovedSection.NameOf(one, turn), out var section) && used.Add(section)) approved[turn] = section;
            held.Add(approved.Count == 0 ? one : one.HeldTo(approved));
        }

        var ofScenarios = cases.Select(one => one.Span.File).OfType<SourceFile>().Select(file => ApprovedFile.PathFor(file.Path)).ToHashSet(StringComparer.Ordinal);
        foreach (var file in files)
        {
            if (!ofScenarios.Contains(file.Path)) bag.Add(Messages.ApprovedWithoutScenarios(file.Span(0, 0)));
            else foreach (var section in sections[file.Path].Values.Where(section => !used.Contains(section))) bag.Add(Messages.ApprovedOfNothing(section.Span, section.Name));
        }

        return held;
    }
}
