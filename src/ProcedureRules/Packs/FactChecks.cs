using ProcedureRules.Diagnostics;
using ProcedureRules.Yaml;

namespace ProcedureRules.Packs;

/// <summary>Checks of facts that need the whole of the packs.</summary>
internal static class FactChecks
{
    /// <summary>Checks how each fact of a pack is found, and what a reading of it rests on.</summary>
    public static void CheckFinding(PackDocument pack, PackDraft draft)
    {
        foreach (var (path, map) in pack.Definitions("facts"))
        {
            if (map.Scalar("find") is { } find && pack.Scope.Find(draft.Operations, find) is { } operation
                && draft.Facts.Find(path.Text)?.Item is { } fact && !fact.Kind.IsA(operation.On))
                draft.Bag.Add(Messages.FindOnOtherKind(find.Span, find.Text, operation.On.Name, path.Text, operation.Span));
            foreach (var aspect in map.Scalars("taken_in"))
                CheckTakenIn(aspect, pack, draft);
        }
    }

    /// <summary>Reports facts whose path means something else already.</summary>
    public static void CheckNames(PackDraft draft)
    {
        foreach (var fact in draft.Facts.Items)
        {
            foreach (var kind in fact.Kind.Lineage())
            {
                var path = $"{kind.Name}.{fact.Name}";
                if (draft.Aspects.Find(path) is { } aspect)
                    draft.Bag.Add(Messages.AspectAndFact(fact.Span, fact.ToString(), aspect.Span));
                if (kind != fact.Kind && draft.Facts.Find(path) is { } general)
                    draft.Bag.Add(Messages.DefinedOnGeneralKind(fact.Span, "a fact", fact.ToString(), kind.Name, general.Span));
            }
        }

        // The other way round: the aspect of a special kind hides a fact of a more general one.
        foreach (var aspect in draft.Aspects.Items)
        {
            foreach (var kind in aspect.Kind.Lineage().Skip(1))
            {
                if (draft.Facts.Find($"{kind.Name}.{aspect.Name}") is { } fact)
                    draft.Bag.Add(Messages.AspectAndFact(fact.Span, aspect.ToString(), aspect.Span));
            }
        }
    }

    /// <summary>Reports facts that nobody is asked for and no rule gives.</summary>
    public static void CheckGiven(PackDraft draft)
    {
        var given = new HashSet<FactDefinition>();
        foreach (var rule in draft.Rules)
            given.UnionWith(rule.Then.SelectMany(Targets).Select(target => FactOf(target, rule.Variables, draft)).OfType<FactDefinition>());
        foreach (var table in draft.Tables)
            given.UnionWith(FactOf(table.Output, table.Variables, draft) is { } fact ? [fact] : []);
        foreach (var fact in draft.Facts.Items.Where(fact => (fact.IsDerived || fact.IsDemand) && !given.Contains(fact)))
            draft.Bag.Add(Messages.NeverSet(fact.Span, fact.ToString(), fact.IsDemand));
    }

    private static IEnumerable<Snippet> Targets(ConclusionDeclaration conclusion) =>
        conclusion.Target is { } target ? [target] : conclusion.Options.SelectMany(option => option.Then).SelectMany(Targets);

    // A target that names no fact is the language's to complain about.
    private static FactDefinition? FactOf(Snippet target, IReadOnlyList<(YamlScalar Name, Snippet Sort)> variables, PackDraft draft)
    {
        if (target.Text.Split('.') is not [var owner, var name])
            return null;
        var sort = variables.FirstOrDefault(variable => variable.Name.Text == owner).Sort?.Text ?? owner;
        return draft.Kinds.Find(sort)?.Item?.Lineage().Select(kind => draft.Facts.Find($"{kind.Name}.{name}")?.Item).FirstOrDefault(fact => fact is not null);
    }

    private static void CheckTakenIn(YamlScalar aspect, PackDocument pack, PackDraft draft)
    {
        if (OwnedPath.Read(aspect, pack, draft) is { } path)
            pack.Scope.FindOf(draft.Aspects, path.Kind, path.Name, aspect.SpanAt(aspect.Text.IndexOf('.') + 1, path.Name.Length));
    }
}
