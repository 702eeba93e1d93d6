using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What keeps a difference from showing in the plan of a moment.</summary>
internal static class Showing
{
    /// <summary>
    /// Whether the plan has the steps that a record is about; one that is about none is always about the plan. What forbids a step is about those
    /// that are not there.
    /// </summary>
    public static bool IsInPlan(TriedStage tried, Record record) =>
        record.Effects.Any(effect => effect.Conclusion is Conclusion.ForbidStep) || record.Premises.OfType<Atom.Occurs>().All(occurs => tried.Of.At.Links.Has(occurs.Step));

    /// <summary>Whether an effect is a need at a step, which the order of the steps can meet by itself.</summary>
    public static bool IsOrder(Effect effect) => effect.Conclusion is Conclusion.Need { Step: >= 0 };

    /// <summary>Whether steps that an effect orders are kept in their order by other things; null where it orders none.</summary>
    public static bool? IsOrderKept(TriedStage tried, Record record, Effect effect) => effect.Conclusion switch
    {
        Conclusion.Need { Step: >= 0 } need => !tried.Of.At.Links.IsRightAfterChange(StateOf(record, effect)!.Value, record.Binding.Step(need.Step)),
        Conclusion.Order order => !tried.Of.At.Links.IsRightAfter(record.Binding.Step(order.First), record.Binding.Step(order.Second)),
        _ => null,
    };

    /// <summary>Whether any of some readings is asked for.</summary>
    public static bool IsAsked(TriedStage tried, IEnumerable<Reading> readings) => readings.Any(reading => tried.Of.At.Links.Asks(reading.Id));

    /// <summary>Whether anything is asked for that conditions of a record read.</summary>
    public static bool IsAsked(TriedStage tried, Record record) => IsAsked(tried, record.Tests.SelectMany(test => test.Reads(record.Binding, tried.Of.Stage.Outcome.Beliefs.PartsOf)));

    /// <summary>Whether a check reads alike with other limits or other words: the same words, the same verdict, and nothing else is read for it.</summary>
    public static bool IsSaidAlike(TriedStage tried, Record record, Effect one, Effect other)
    {
        if (one.Conclusion is not Conclusion.Check before || other.Conclusion is not Conclusion.Check after || before.Step != after.Step || before.During != after.During) return false;
        var (beliefs, binding) = (tried.Of.Stage.Outcome.Plan.Beliefs, record.Binding);
        return before.Text.Render(beliefs, binding, UnitSystem.Us) == after.Text.Render(beliefs, binding, UnitSystem.Us)
            && before.Limits.Evaluate(beliefs, binding) == after.Limits.Evaluate(beliefs, binding)
            && before.Limits.Reads(binding, beliefs.PartsOf).SequenceEqual(after.Limits.Reads(binding, beliefs.PartsOf));
    }

    /// <summary>The state that an effect asks for; null where it asks for none.</summary>
    public static GroundState? StateOf(Record record, Effect effect) =>
        effect.Conclusion is Conclusion.Need need ? new GroundState(record.Binding.Part(need.State.Slot), need.State.Aspect, need.State.States) : null;

    /// <summary>Whether a state is so without any step of the plan.</summary>
    public static bool IsSoAnyway(TriedStage tried, GroundState state) =>
        state.States.Has(tried.Of.Stage.Outcome.Plan.Situation.StateNow(state.Part, state.Aspect)) && !tried.Of.At.Links.Changes(state.Part, state.Aspect);

    /// <summary>The rules beside the one tried that ask for the same of the same step, or support the same; as firmly as the plan has it.</summary>
    public static IEnumerable<string> Others(TriedStage tried, Record record, Effect effect)
    {
        var outcome = tried.Of.Stage.Outcome;
        var beliefs = outcome.Plan.Beliefs.Network == outcome.Beliefs.Network ? outcome.Plan.Beliefs : outcome.Beliefs;
        IEnumerable<RecordEffect> same = (effect.Conclusion, effect.Atom) switch
        {
            (Conclusion.Need { Step: >= 0 } need, _) => beliefs.Network.RecordsAbout(record.Binding.Step(need.Step)).Where(other => AsksForIt(other, record, need)),
            (_, { } atom) => beliefs.Network.RecordsSupporting(atom),
            _ => [],
        };
        return from other in same
               let rule = Stages.RuleOf(other.Record)
               where rule is not null && (rule.Pack, rule.Title) != (tried.Rule.Pack, tried.Rule.Title) && beliefs.Available(other.Record, other.Index) >= Assurance.Provisional
               select rule.Title;
    }

    private static bool AsksForIt(RecordEffect other, Record record, Conclusion.Need need) =>
        other.Effect.Conclusion is Conclusion.Need { Step: >= 0 } theirs
        && other.Record.Binding.Step(theirs.Step).Equals(record.Binding.Step(need.Step))
        && other.Record.Moments.Count == 0
        && StateOf(other.Record, other.Effect) is { } state
        && state.Part == record.Binding.Part(need.State.Slot) && ReferenceEquals(state.Aspect, need.State.Aspect)
        && (state.States.Bits & ~need.State.States.Bits) == 0;
}
