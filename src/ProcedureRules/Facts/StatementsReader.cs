using ProcedureRules.Diagnostics;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads the relations, facts and states of a layer, when all parts are known.</summary>
internal sealed class StatementsReader(SituationBuilder builder, SheetLayer layer, DiagnosticBag bag)
{
    /// <summary>Reads them into the builder.</summary>
    public void Read()
    {
        var relations = new Dictionary<(Relation, Part, Part), YamlScalar>();
        foreach (var item in Snippets.Whole(layer.Root.List("relations"), bag))
            ReadRelation(item, relations);
        var facts = new Dictionary<FactKey, YamlScalar>();
        foreach (var entry in layer.Root.Map("facts")?.Entries ?? [])
            ReadFact(entry, facts);
        var states = new Dictionary<StateVariable, YamlScalar>();
        foreach (var entry in layer.Root.Map("arrival")?.Entries ?? [])
            ReadState(entry, states);
    }

    private void ReadRelation(YamlNode item, Dictionary<(Relation, Part, Part), YamlScalar> first)
    {
        var map = item as YamlMapping;
        if ((item as YamlScalar ?? map?.Scalar("relation")) is { IsNothing: false } text
            && RelationStatementReader.Read(text, builder, layer.IsArchetype, layer.SourceOf(map), bag) is { } statement
            && IsFirst((statement.Relation, statement.A, statement.B), text, $"{statement.Relation}({statement.A}, {statement.B})", first))
            builder.State(statement);
    }

    private void ReadFact(YamlEntry entry, Dictionary<FactKey, YamlScalar> first)
    {
        if (PartPath.Read(entry.Key, builder, layer.IsArchetype, bag) is not { } path || path.Fact(builder.Vocabulary, bag) is not { } fact)
            return;
        var key = new FactKey(path.Part, fact);
        if (!IsFirst(key, entry.Key, key.ToString(), first))
            return;
        if (layer.Replaces)
            builder.Forget(key, _ => true);
        IEnumerable<YamlNode> readings = entry.Value is YamlSequence list ? list.Items : [entry.Value];
        foreach (var reading in readings)
            ReadReading(key, reading);
    }

    private void ReadReading(FactKey key, YamlNode reading)
    {
        var map = reading as YamlMapping;
        if ((reading as YamlScalar ?? map?.Scalar("value")) is not { IsNothing: false } text)
            return;
        if (ValueReader.IsUnknown(text))
            builder.Forget(key, _ => true);
        else if (ValueReader.Read(key, text, bag) is { } value)
            builder.Take(new Observation(key, value, layer.SourceOf(map), map?.Text("note"), text.Span, map?.YesNo("sure") ?? false), text.Text, bag);
    }

    private void ReadState(YamlEntry entry, Dictionary<StateVariable, YamlScalar> first)
    {
        if (PartPath.Read(entry.Key, builder, layer.IsArchetype, bag) is not { } path || path.Aspect(builder.Vocabulary, bag) is not { } aspect
            || !IsFirst(new StateVariable(path.Part, aspect), entry.Key, $"{path.Part}.{path.Name}", first) || entry.Value is not YamlScalar { IsNothing: false } text)
            return;
        var state = aspect.IndexOf(text.Text);
        if (state < 0)
            bag.Add(Messages.NotAState(text.Span, text.Text, $"{path.Part}.{path.Name}", aspect.States));
        else
            builder.SetState(path.Part, aspect, state);
    }

    // A path by the name of a part and one by its kind may mean the same.
    private bool IsFirst<T>(T key, YamlScalar written, string words, Dictionary<T, YamlScalar> first)
        where T : notnull
    {
        if (first.TryAdd(key, written))
            return true;
        bag.Add(Messages.StatedTwice(written.Span, words, first[key].Span));
        return false;
    }
}
