using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Plans;
using ProcedureRules.Quantities;
using ProcedureRules.Testing.Approving;

namespace ProcedureRules.Testing.Mutating;

/// <summary>
/// The signs of rules in an approved plan. A sign that no record of its rule can give any more is gone from whatever plan comes, so that this
/// plan need not be made to know that it is another one.
/// </summary>
internal sealed class PlanSigns
{
    private readonly Dictionary<(string Pack, string Title), HashSet<Sign>> _signs = [];
    private readonly HashSet<Step> _steps;
    private readonly Plan _plan;

    public PlanSigns(Plan plan)
    {
        (_plan, _steps) = (plan, [.. plan.Steps.Select(step => step.Step)]);
        foreach (var caution in plan.Cautions) Note(caution.Reason, sign => sign.Sort == SignSort.Caution && sign.At is null && sign.Words == Words(caution));
        foreach (var stop in plan.Stops) Note(stop.Reason, sign => sign.Sort == SignSort.Stop && sign.Words == stop.Text.ToString());
        foreach (var item in plan.Tools) Note(item.Reason, sign => sign.Sort == SignSort.Tool && sign.Words == item.Text.ToString());
        foreach (var item in plan.Supplies) Note(item.Reason, sign => sign.Sort == SignSort.Supply && sign.Words == item.Text.ToString());
        foreach (var item in plan.Offers) Note(item.Reason, sign => sign.Sort == SignSort.Offer && item.Text.ToString().StartsWith(sign.Words, StringComparison.Ordinal));
        foreach (var finding in plan.Findings)
            foreach (var reason in finding.For.Concat(finding.Against)) Note(reason, sign => sign.Sort == SignSort.Finding && sign.At == finding.Part && sign.Words == finding.Cause.Name);
        foreach (var choice in plan.Choices)
            foreach (var reason in choice.Because) Note(reason, sign => sign.Sort == SignSort.Wants);
        foreach (var step in plan.Steps) Note(step);
        NoteFigures(plan.Beliefs);
    }

    /// <summary>Whether the plan names a rule.</summary>
    public bool Have(CompiledRule rule) => _signs.ContainsKey((rule.Pack, rule.Title));

    /// <summary>Whether a sign of a rule stands in the plan that none of its records, as they are after a change, can give.</summary>
    public bool AreLost(CompiledRule rule, IEnumerable<Record> after) =>
        _signs.TryGetValue((rule.Pack, rule.Title), out var signs) && !signs.IsSubsetOf(after.SelectMany(Of));

    /// <summary>
    /// Whether a record that is surely on says something, at a step of the plan, that does not stand there: then the plan that comes either
    /// says it or lacks the step.
    /// </summary>
    public bool AreNew(Record record)
    {
        if (record.Rule is null || record.Moments.Count > 0 || record.Premises.Any(premise => premise is Atom.Occurs occurs && !_steps.Contains(occurs.Step))) return false;
        return Of(record).Any(sign => sign.Sort is SignSort.Caution or SignSort.Detail or SignSort.Check && sign.At is Step step && _steps.Contains(step) && !Says(step, sign));
    }

    private bool Says(Step at, Sign sign) => _plan.Steps.Where(step => step.Step.Equals(at)).All(step => sign.Sort switch
    {
        SignSort.Caution => step.Cautions.Any(caution => Words(caution) == sign.Words),
        SignSort.Detail => step.Detail.Any(detail => detail.ToString() == sign.Words),
        _ => step.Checks.Any(check => check.Text.ToString() == sign.Words),
    });

    private void Note(PlanStep step)
    {
        foreach (var caution in step.Cautions) Note(caution.Reason, sign => sign.Sort == SignSort.Caution && step.Step.Equals(sign.At) && sign.Words == Words(caution));
        foreach (var check in step.Checks) Note(check.Reason, sign => sign.Sort == SignSort.Check && step.Step.Equals(sign.At) && sign.Words == check.Text.ToString());
        foreach (var wait in step.Waits) Note(wait.Reason, sign => sign.Sort == SignSort.Wait && step.Step.Equals(sign.At) && sign.Words == Words(wait.Least, wait.Most));
        foreach (var hold in step.Holds) Note(hold.Reason, sign => sign.Sort == SignSort.Hold && step.Step.Equals(sign.At) && hold.Text.ToString().StartsWith(sign.Words, StringComparison.Ordinal));
        foreach (var source in _plan.Beliefs.Network.RecordsAbout(step.Step).Where(source => source.Effect.Conclusion is Conclusion.Detail))
            Note(source.Record, sign => sign.Sort == SignSort.Detail && step.Step.Equals(sign.At) && step.Detail.Any(detail => detail.ToString() == sign.Words)
                && _plan.Beliefs.Given(source.Record, source.Index, step.Step) > Assurance.Held);
        foreach (var reason in step.Because.Where(reason => reason.Record.Rule is { } rule && !rule.Name.StartsWith("operation ", StringComparison.Ordinal)))
        {
            // Whatever stands behind the step by several ways is looked for in a plan.
            var given = Of(reason.Record).Where(sign => sign.Sort == SignSort.Wants || (sign.Sort is SignSort.Order or SignSort.Slower && step.Step.Equals(sign.At))).Distinct().ToList();
            if (given is [var only]) Note(reason.Record, sign => sign == only);
        }
    }

    private void NoteFigures(BeliefState beliefs)
    {
        foreach (var key in beliefs.Network.Graph.Nodes.Facts.Where(key => PlanOutline.IsWorkedOut(beliefs, key)))
            foreach (var setter in beliefs.SettersOf(key)) Note(setter, sign => sign.Sort == SignSort.Set && key.Equals(sign.At));
        foreach (var source in beliefs.Network.RecordsWith<Conclusion.Demand>().Where(source => beliefs.Available(source.Record, source.Index) > Assurance.No))
            Note(source.Record, sign => sign.Sort == SignSort.Demand && source.Effect.Fact.Equals(sign.At));
    }

    private void Note(Reason? reason, Predicate<Sign> isIt)
    {
        if (reason is not null) Note(reason.Record, isIt);
    }

    private void Note(Record record, Predicate<Sign> isIt)
    {
        if (record.Rule is not { } rule) return;
        foreach (var sign in Of(record))
        {
            if (!isIt(sign)) continue;
            if (!_signs.TryGetValue((rule.Pack, rule.Title), out var signs)) _signs[(rule.Pack, rule.Title)] = signs = [];
            signs.Add(sign);
        }
    }

    // Everything that a record can be the reason of, whether or not it is.
    private IEnumerable<Sign> Of(Record record)
    {
        var binding = record.Binding;
        foreach (var effect in record.Effects)
        {
            if (effect.Atom is not null) yield return new(SignSort.Wants, null);
            Sign? sign = effect.Conclusion switch
            {
                Conclusion.Caution caution => new(SignSort.Caution, At(caution.Step), $"{caution.Signal} {Text(caution.Text)}"),
                Conclusion.Detail detail => new(SignSort.Detail, At(detail.Step), Text(detail.Text)),
                Conclusion.Check check => new(SignSort.Check, At(check.Step), Text(check.Text)),
                Conclusion.Wait wait => new(SignSort.Wait, At(wait.Until), Words(wait.Least?.Evaluate(_plan.Beliefs, binding).Quantity, wait.Most?.Evaluate(_plan.Beliefs, binding).Quantity)),
                Conclusion.Figure figure => new(SignSort.Hold, At(figure.Step), $"{binding.Part(figure.Slot).Text} {Plans.Words.Name(figure.Fact.Name)} is not known"),
                Conclusion.Tool tool => new(SignSort.Tool, null, Text(tool.Text)),
                Conclusion.Supply supply => new(SignSort.Supply, null, Text(supply.Text)),
                Conclusion.Offer { Text: { } text } => new(SignSort.Offer, null, Text(text)),
                Conclusion.Stop stop => new(SignSort.Stop, null, Text(stop.Text)),
                Conclusion.Finding finding => new(SignSort.Finding, binding.Part(finding.Slot), finding.Cause.Name),
                Conclusion.Set => new(SignSort.Set, effect.Fact),
                Conclusion.Demand => new(SignSort.Demand, effect.Fact),
                Conclusion.Order order => new(SignSort.Order, At(order.Second)),
                Conclusion.Slower slower => new(SignSort.Slower, At(slower.Step)),
                _ => null,
            };
            if (sign is { } given) yield return given;
        }

        object? At(int slot) => slot < 0 ? null : binding[slot];
        string Text(Template text) => text.Render(_plan.Beliefs, binding, UnitSystem.Us);
    }

    private static string Words(PlanCaution caution) => $"{caution.Signal} {caution.Text}";

    private static string Words(Quantity? least, Quantity? most) => $"{least?.ToDisplay(UnitSystem.Us)}..{most?.ToDisplay(UnitSystem.Us)}";
}
