using ProcedureRules.Beliefs;
using ProcedureRules.Facts;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Ordering;
using ProcedureRules.Plans;

namespace ProcedureRules.Explaining;

/// <summary>What stands behind each sort of thing that a plan says. For one explanation: what it told it does not tell again.</summary>
internal sealed class ItemTrees(Plan plan)
{
    private const int MostReaders = 2;

    private readonly BeliefState _beliefs = plan.Beliefs;
    private readonly WhyTree _tree = new(plan.Beliefs, plan);

    /// <summary>Why a record says something, with what its conclusions of that sort reckon with.</summary>
    public WhyNode Of(Record record, PlanItemSort? sort = null) => _tree.Of(record, conclusion => (sort, conclusion) is
        (PlanItemSort.Check, Conclusion.Check) or (PlanItemSort.Wait, Conclusion.Wait) or (PlanItemSort.Hold, Conclusion.Figure));

    public WhyNode Of(Reading reading) => _tree.Of(reading);

    public IEnumerable<WhyNode> Of(PlanStep step)
    {
        var found = plan.Questions.Where(question => question.AtStep == step.Id).ToList();
        var behind = found.Count > 0 && !IsDueOtherwise(step) ? found.Select(question => new WhyNode(WhyNodeSort.Rule, question.Text, [.. Of(question)])) : _tree.Behind(new Atom.Occurs(step.Step));
        var figures = _beliefs.Network.Result.Rules.Instructions.TryGetValue(step.Step.Operation, out var text) ? FiguresOf(text, new Binding([step.Step.Part])) : [];
        return [.. behind, .. figures];
    }

    public IEnumerable<WhyNode> OfFigure(FactKey key)
    {
        var isDemanded = _beliefs.Network.RecordsWith<Conclusion.Demand>().Any(demand => demand.Effect.Fact == key && _beliefs.Available(demand.Record, demand.Index) > Assurance.No);
        return isDemanded ? [_tree.Of(new Reading.OfFact(key)), _tree.Of(new Reading.OfDemand(key))] : [_tree.Of(new Reading.OfFact(key))];
    }

    public IEnumerable<WhyNode> Of(PlanHold hold) =>
        [Of(hold.Reason.Record, PlanItemSort.Hold), .. plan.Questions.Where(question => hold.Questions.Contains(question.Id)).Select(question => _tree.Of(question.About))];

    public IEnumerable<WhyNode> Of(PlanChoice choice) =>
        [.. choice.Because.Select(reason => _tree.Of(reason.Record)), .. AtomTexts.NotTaken(choice)];

    public IEnumerable<WhyNode> Of(PlanFinding finding) => finding.For.Concat(finding.Against).Select(reason => _tree.Of(reason.Record));

    public IEnumerable<WhyNode> Of(PlanQuestion question)
    {
        var doubted = question.Doubted is { } stated ? WhyNode.Leaf(WhyNodeSort.Fact, stated, question.Id) : null;
        var matters = question.Matters.Select(matter => WhyNode.Leaf(WhyNodeSort.Declaration, new Wording(units => $"it decides: {matter.In(units)}")));
        var readers = Readers(question.About).Take(MostReaders).Select(record => Of(record)).ToList();
        return [.. doubted is null ? [] : new[] { doubted }, _tree.Of(question.About), .. readers.Count > 0 ? readers : matters];
    }

    public IEnumerable<WhyNode> Of(PlanTellingCheck check) =>
    [
        _tree.Of(check.About),
        .. from answer in check.Answers
           from told in new[] { (Words: "speaks for", Causes: answer.Confirms), (Words: "rules out", Causes: answer.RulesOut) }
           where told.Causes.Count > 0
           select WhyNode.Leaf(WhyNodeSort.Declaration, new Wording(units => $"{answer.Answer.In(units)} {told.Words}: {string.Join("; ", told.Causes.Select(cause => cause.In(units)))}")),
    ];

    public IEnumerable<WhyNode> Of(Conflict conflict) => conflict.About is Reading.OfFact { Key: var key }
        ? [
            .. _beliefs.Observations(key).Select(said => WhyNode.Leaf(
                WhyNodeSort.Fact, new Wording(units => $"{said.Value.In(units)}, {said.Source.ToString().ToLowerInvariant()}{(said.Note is null ? "" : $" ({said.Note})")}"), key.ToString())),
            .. _beliefs.Network.RecordsWith<Conclusion.Set>()
                .Where(effect => effect.Effect.Fact == key && _beliefs.Required(effect.Record, effect.Index) == Assurance.Sure)
                .Select(effect => _tree.Of(effect.Record)),
        ]
        : Statements.Behind(plan.Situation, conflict.About).Select(said => WhyNode.Leaf(
            WhyNodeSort.Fact, $"{AtomTexts.Word(said.Truth)}, {said.Source.ToString().ToLowerInvariant()}", conflict.About.Id));

    public IEnumerable<WhyNode> OfAssumption(PlanItem assumption) =>
    [
        WhyNode.Leaf(WhyNodeSort.Fact, new Wording(units => $"{assumption.Text.In(units)}, assumed and not looked at")),
        .. plan.Steps.Where(step => assumption.Steps.Contains(step.Id)).Take(MostReaders).Select(step => _tree.Of(step.Step)),
    ];

    public IEnumerable<WhyNode> OfDetail(PlanStep step, Wording detail)
    {
        foreach (var (source, level) in _beliefs.SaidOf(step.Step))
        {
            if (source.Effect.Conclusion is not Conclusion.Detail line || level <= Assurance.Held) continue;
            if (new Wording(line.Text, _beliefs, source.Record.Binding).IsSame(detail)) return [_tree.Of(source.Record), .. FiguresOf(line.Text, source.Record.Binding)];
        }

        return [];
    }

    public IEnumerable<WhyNode> OfOrder(PlanStep first, PlanStep second) => new OrderGrounds(plan, this).Of(first, second);

    // A check that only its question asks for stands there for the question.
    private bool IsDueOtherwise(PlanStep step) => Requirements.IsDue(_beliefs, new Atom.Occurs(step.Step));

    private IEnumerable<WhyNode> FiguresOf(Template text, Binding binding) =>
        ReadFacts.Of(text, _beliefs, binding).Where(reading => reading is Reading.OfFact or Reading.OfDemand).Select(_tree.Of);

    // Those that read it, or what is worked out of it; the ones about steps of the plan first, then the nearest.
    private IEnumerable<Record> Readers(Reading about)
    {
        var steps = plan.Steps.Select(step => step.Step).ToHashSet();
        var (seen, found, open) = (new HashSet<Reading> { about }, new Dictionary<Record, int>(), new Queue<(Reading, int)>([(about, 0)]));
        while (open.TryDequeue(out var next))
        {
            foreach (var record in _beliefs.Network.Readers(next.Item1))
            {
                for (var i = 0; i < record.Effects.Count; i++)
                {
                    if (_beliefs.Available(record, i) == Assurance.No) continue;
                    if (record.Effects[i].Fact is not { } worked) found.TryAdd(record, next.Item2);
                    else
                        foreach (var further in new Reading[] { new Reading.OfFact(worked), new Reading.OfDemand(worked) })
                            if (seen.Add(further)) open.Enqueue((further, next.Item2 + 1));
                }
            }
        }

        return found.OrderByDescending(entry => Foundations.IsWithin(entry.Key, steps)).ThenBy(entry => entry.Value)
            .ThenBy(entry => entry.Key.Name, StringComparer.Ordinal).Select(entry => entry.Key);
    }
}
