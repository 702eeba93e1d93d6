using System.Text;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Facts;

/// <summary>Writes a situation as a vehicle sheet and a work order, such that reading them gives the same situation.</summary>
internal static class SheetWriter
{
    /// <summary>The vehicle sheet; lines end with LF.</summary>
    /// <param name="situation">What to write.</param>
    /// <param name="units">The units of quantities.</param>
    public static string WriteVehicle(Situation situation, UnitSystem units = UnitSystem.Si)
    {
        var text = new StringBuilder($"vehicle: {YamlWords.Write(situation.Title)}\n");
        Append(text, "parts", situation.PartStatements.Where(part => part.Source != Source.None && part.Part.Name != Vocabulary.VehicleKind).Select(Part));
        Append(text, "relations", situation.Relations.Where(relation => relation.Source != Source.None).Select(Relation));
        var readings = situation.Observations.Concat(situation.Doubts.Select(doubt => new Observation(doubt.Fact, doubt.Value, doubt.Source, doubt.Note)));
        Append(text, "facts", readings.GroupBy(observation => observation.Fact).Select(fact => Fact(fact.Key, [.. fact], units)));
        Append(text, "arrival", situation.States.Select(state => $"  {state.Key.Part}.{state.Key.Aspect.Name}: {state.Key.Aspect.States[state.Value]}\n"));
        return text.ToString();
    }

    /// <summary>The work order; lines end with LF.</summary>
    /// <param name="situation">What to write.</param>
    /// <param name="title">What it is, one line.</param>
    /// <param name="vehicle">The path of the vehicle sheet from there.</param>
    public static string WriteWorkOrder(Situation situation, string title, string vehicle)
    {
        var text = new StringBuilder($"work_order: {YamlWords.Write(title)}\nvehicle: {YamlWords.Write(vehicle)}\n");
        Append(text, "jobs", situation.Jobs.Select(job => $"  - {{job: {job.Job}, on: {job.On}}}\n"));
        Append(text, "choose", situation.Ways.Select(way => $"  {YamlWords.Write(way.Choice)}: {YamlWords.Write(way.Way)}\n"));
        return text.ToString();
    }

    private static void Append(StringBuilder text, string key, IEnumerable<string> lines)
    {
        var all = string.Concat(lines);
        if (all.Length > 0)
            text.Append(key).Append(":\n").Append(all);
    }

    private static string Part(PartStatement statement)
    {
        var part = statement.Part;
        var fields = new List<string>();
        if (part.Text != new Part(part.Name, part.Kind).Text)
            fields.Add($"text: {YamlWords.Quote(part.Text)}");
        if (statement.Exists != Truth.Yes)
            fields.Add($"fitted: {Word(statement.Exists)}");
        if (statement.Source != Source.Stated)
            fields.Add($"source: {Word(statement.Source)}");
        if (fields.Count == 0)
            return $"  {part.Name}: {part.Kind}\n";
        return fields is [_] && statement.Exists != Truth.Yes && part.Name == part.Kind.Name
            ? $"  {part.Name}: {Word(statement.Exists)}\n"
            : $"  {part.Name}: {{kind: {part.Kind}, {string.Join(", ", fields)}}}\n";
    }

    private static string Relation(RelationStatement statement)
    {
        var answer = statement.Holds switch { Truth.No => "not ", Truth.Unknown => "unknown ", _ => "" };
        var text = $"{answer}{statement.Relation}({statement.A}, {statement.B})";
        return statement.Source == Source.Stated ? $"  - {text}\n" : $"  - {{relation: \"{text}\", source: {Word(statement.Source)}}}\n";
    }

    private static string Fact(FactKey key, List<Observation> observations, UnitSystem units)
    {
        if (observations is [{ Source: Source.Stated, Note: null, IsSure: false } only])
            return $"  {key}: {Write(only.Value, units)}\n";
        return $"  {key}:\n{string.Concat(observations.Select(Reading))}";

        string Reading(Observation observation)
        {
            var note = observation.Note is null ? "" : $", note: {YamlWords.Quote(observation.Note)}";
            return $"    - {{value: {Write(observation.Value, units)}, source: {Word(observation.Source)}{note}{(observation.IsSure ? ", sure: yes" : "")}}}\n";
        }
    }

    /// <summary>A value as a sheet or a statement has it.</summary>
    public static string Write(Value value, UnitSystem units)
    {
        if (value.Type.IsText)
            return YamlWords.Quote(value.Text ?? "");
        if (value.Type.IsQuantity)
            return YamlWords.Write(value.Quantity.ToString(units));
        return string.Join(" | ", value.Type.Words.Where((_, index) => (value.Words >> index & 1) != 0));
    }

    private static string Word(Truth truth) => truth switch { Truth.Yes => "yes", Truth.No => "no", _ => "unknown" };

    private static string Word(Source source) => source switch
    {
        Source.Measured => "measured",
        Source.Estimated => "estimated",
        Source.Assumed => "assumed",
        _ => "stated",
    };
}
