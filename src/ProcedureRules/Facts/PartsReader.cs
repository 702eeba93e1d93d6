using ProcedureRules.Diagnostics;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Yaml;

namespace ProcedureRules.Facts;

/// <summary>Reads the parts of a layer.</summary>
internal sealed class PartsReader(SituationBuilder builder, SheetLayer layer, DiagnosticBag bag)
{
    /// <summary>Reads them into the builder.</summary>
    public void Read()
    {
        foreach (var entry in layer.Root.Map("parts")?.Entries ?? [])
        {
            if (!Forms.NamePattern.Matches(entry.Name))
                continue;
            if (entry.Name == Vocabulary.VehicleKind)
                bag.Add(Messages.OneVehicle(entry.Key.Span));
            else
                Read(entry);
        }
    }

    private void Read(YamlEntry entry)
    {
        switch (entry.Value)
        {
            case YamlScalar { IsNothing: true }:
                break;
            case YamlScalar { Text: "no" }:
                State(entry.Key, null, null, Truth.No, layer.Source);
                break;
            case YamlScalar { Text: "unknown" }:
                State(entry.Key, null, null, Truth.Unknown, layer.Source);
                break;
            case YamlScalar kind:
                State(entry.Key, kind, null, Truth.Yes, layer.Source);
                break;
            case YamlMapping map:
                var fitted = map.Text("fitted") switch { "no" => Truth.No, "unknown" => Truth.Unknown, _ => Truth.Yes };
                State(entry.Key, map.Scalar("kind"), map.Text("text"), fitted, layer.SourceOf(map));
                break;
        }
    }

    private void State(YamlScalar name, YamlScalar? kindName, string? text, Truth exists, Source source)
    {
        if (PartOf(name, kindName, text) is { } part)
            builder.State(new PartStatement(part, exists, source, name.Span));
        else
            builder.MarkBroken(name.Text);
    }

    private Part? PartOf(YamlScalar name, YamlScalar? kindName, string? text)
    {
        var before = builder.Find(name.Text);
        if (kindName is null)
        {
            if (before is not null)
                return text is null || text == before.Text ? before : new Part(name.Text, before.Kind, text);
            if (builder.Vocabulary.Kinds.TryGetValue(name.Text, out var own))
                return new Part(name.Text, own, text);
            bag.Add(Messages.NeitherPartNorKind(name.Span, name.Text, builder.Parts.Select(part => part.Name).Concat(builder.Vocabulary.Kinds.Keys)));
            return null;
        }

        if (!builder.Vocabulary.Kinds.TryGetValue(kindName.Text, out var kind))
        {
            bag.Add(Messages.UnknownKind(kindName.Span, kindName.Text, builder.Vocabulary.Kinds.Keys));
            return null;
        }

        if (kind.Name == Vocabulary.VehicleKind)
        {
            bag.Add(Messages.OneVehicle(kindName.Span));
            return null;
        }

        if (!builder.Vocabulary.Kinds.TryGetValue(name.Text, out var named) || kind.IsA(named))
            return new Part(name.Text, kind, text);
        bag.Add(Messages.NameOfOtherKind(name.Span, name.Text, kind.Name));
        return null;
    }
}
