using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Packs;
using ProcedureRules.Plans;

namespace ProcedureRules.Asking;

/// <summary>Puts inquiries as questions to a technician, and says at which step one is answered by work.</summary>
internal static class QuestionWriter
{
    /// <summary>The id of a key, as it is set again: a fact's path, a relation with its parts, a part's name.</summary>
    public static string IdOf(Reading reading) => reading.Id;

    /// <summary>The step that finds out a reading, whether or not it takes any work; null where none does.</summary>
    public static Step? FindingOut(BeliefState beliefs, Reading reading)
    {
        if (reading is not Reading.OfFact { Key: var key } || key.Fact.FindOperation is not { } name) return null;
        if (!beliefs.Network.Result.Rules.Vocabulary.Operations.TryGetValue(name, out var operation)) return null;
        var step = new Step(operation, key.Part);
        return beliefs.Network.AtomsOf<Atom.Occurs>().Any(atom => atom.Step.Equals(step)) ? step : null;
    }

    /// <summary>The step that finds a fact out, where it is done anyway, or takes work whose needs do not hold now and inference has seen it.</summary>
    public static Step? CheckFor(BeliefState beliefs, Reading reading)
    {
        if (FindingOut(beliefs, reading) is not { } step) return null;
        if (Requirements.IsDue(beliefs, new Atom.Occurs(step))) return step;
        var situation = beliefs.Network.Result.Situation;
        foreach (var (source, level) in beliefs.SaidOf(step))
        {
            if (level < Assurance.Provisional || source.Effect.Conclusion is not Conclusion.Need { Step: >= 0 } need || !source.Record.Binding.Step(need.Step).Equals(step)) continue;
            if (source.Record.Moments.Any(moment => !moment.States.Has(situation.StateNow(moment.Part, moment.Aspect)))) continue;
            if (!need.State.States.Has(situation.StateNow(source.Record.Binding.Part(need.State.Slot), need.State.Aspect))) return step;
        }
        return null;
    }

    /// <summary>The question of an inquiry.</summary>
    public static PlanQuestion Write(BeliefState beliefs, Inquiry inquiry, IReadOnlyList<Occurrence> occurrences)
    {
        var at = At(beliefs, inquiry.About, occurrences);
        var (text, how) = Put(beliefs, inquiry.About);
        return new PlanQuestion(IdOf(inquiry.About), inquiry.About, text, how, at, new WhenRead<Wording>(() => [.. inquiry.Matters.DistinctBy(matter => matter.ToString())]), Assumed(beliefs, inquiry.About),
            inquiry.Urgency == Urgency.Safety, Doubted(beliefs, inquiry.About))
        {
            After = [.. inquiry.After.Select(IdOf).Order(StringComparer.Ordinal)],
        };
    }

    /// <summary>The id of the step of a plan that finds a key out; null where none does.</summary>
    public static string? At(BeliefState beliefs, Reading about, IReadOnlyList<Occurrence> occurrences) =>
        CheckFor(beliefs, about) is { } check ? occurrences.FirstOrDefault(occurrence => occurrence.Work.Step.Equals(check))?.Id : null;

    /// <summary>The question about a key, and how to find out.</summary>
    public static (Wording Text, Wording? How) Put(BeliefState beliefs, Reading reading) => reading switch
    {
        Reading.OfFact { Key: var key } => (
            Fill(beliefs, beliefs.Network.Result.Rules.Questions, key) ?? new Wording($"What is {key}?"),
            Fill(beliefs, beliefs.Network.Result.Rules.WaysToFind, key)),
        Reading.OfRelation relation => (
            new Wording($"Is it so that {Words.Relation(relation.Relation, relation.A, relation.B)}?"),
            relation.Relation.How is { } how ? new Wording(how) : null),
        Reading.OfPart part => (new Wording($"Does the vehicle have this: {part.Part.Text}?"), null),
        _ => (new Wording(IdOf(reading)), null),
    };

    private static Wording? Fill(BeliefState beliefs, IReadOnlyDictionary<FactDefinition, Template> texts, FactKey key) =>
        texts.TryGetValue(key.Fact, out var text) ? new Wording(text, beliefs, new([key.Part])) : null;

    private static Wording? Doubted(BeliefState beliefs, Reading reading)
    {
        if (reading is not Reading.OfFact { Key: var key }) return null;
        if (beliefs.Network.Result.Situation.Doubts.FirstOrDefault(doubt => doubt.Fact == key) is not { } doubt) return null;
        var fits = doubt.Likely is { } likely ? $", while {likely} would fit" : "";
        return new Wording(units =>
            $"{doubt.Value.In(units)} was stated and is not used: it is outside what occurs ({key.Fact.Plausible!.Value.ToDisplay(units)}){fits}. If it is right, state it as sure.");
    }

    private static Wording? Assumed(BeliefState beliefs, Reading reading)
    {
        if (reading is not Reading.OfFact { Key: var key } || beliefs.SourceOf(key) is not (Source.Assumed or Source.Estimated)) return null;
        var value = beliefs.Fact(key.Part, key.Fact);
        return new Wording(units => value.In(units));
    }
}
