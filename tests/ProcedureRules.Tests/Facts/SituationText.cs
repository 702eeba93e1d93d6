using System.Text;
using ProcedureRules.Facts;

namespace ProcedureRules.Tests.Facts;

/// <summary>All that a situation says, as one text, to compare situations by.</summary>
internal static class SituationText
{
    public static string Of(Situation situation)
    {
        var text = new StringBuilder(situation.Title).AppendLine();
        foreach (var part in situation.PartStatements)
            text.AppendLine($"{part.Part.Name}: {part.Part.Kind} '{part.Part.Text}' {part.Exists} {part.Source}");
        foreach (var relation in situation.Relations)
            text.AppendLine($"{relation.Relation}({relation.A}, {relation.B}) {relation.Holds} {relation.Source}");
        foreach (var seen in situation.Observations)
            text.AppendLine($"{seen.Fact} = {seen.Value.Quantity.Low:R}..{seen.Value.Quantity.High:R} {seen.Value.Words} '{seen.Value.Text}' {seen.Source} '{seen.Note}' {seen.IsSure}");
        foreach (var doubt in situation.Doubts.OrderBy(doubt => doubt.Fact.ToString(), StringComparer.Ordinal))
            text.AppendLine($"{doubt.Fact} = {doubt.Value.Quantity.Low:R}..{doubt.Value.Quantity.High:R} {doubt.Source} '{doubt.Note}' doubted");
        foreach (var ((part, aspect), state) in situation.States.OrderBy(state => state.Key.Part.Name + state.Key.Aspect.Name, StringComparer.Ordinal))
            text.AppendLine($"{part}.{aspect.Name} is {aspect.States[state]}");
        foreach (var job in situation.Jobs)
            text.AppendLine($"{job.Job} on {job.On}");
        return text.ToString();
    }
}
