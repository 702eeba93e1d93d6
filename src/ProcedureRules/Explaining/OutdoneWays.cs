using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Explaining;

/// <summary>
/// Ways that no fact can make the best. Another way to the same state starts from wherever this one does, brings nothing with it, can never be
/// forbidden, and always takes less labour: in every plan it could stand in its place.
/// </summary>
/// <param name="open">The beliefs when nothing is known.</param>
internal sealed class OutdoneWays(BeliefState open)
{
    private readonly Dictionary<Step, bool> _isOutdone = [];
    private readonly ILookup<Step, Record> _followers = (from record in open.Network.Records
                                                         from step in record.Premises.OfType<Atom.Occurs>()
                                                         select (step.Step, record)).ToLookup(entry => entry.Step, entry => entry.record);

    private readonly ILookup<ChoiceKey, Step> _ways = (from record in open.Network.Records
                                                       where record.Mechanism == Mechanism.Alternative
                                                       from choice in record.Premises.OfType<Atom.Open>()
                                                       from effect in record.Effects
                                                       where effect.Atom is Atom.Occurs
                                                       select (choice.Choice, ((Atom.Occurs)effect.Atom!).Step)).ToLookup(entry => entry.Choice, entry => entry.Step);

    /// <summary>Whether whatever can ask for a step has a better way, or is undone by it after such a step.</summary>
    public bool Has(Step step)
    {
        if (_isOutdone.TryGetValue(step, out var known)) return known;
        _isOutdone[step] = false; // What asks for itself is asked for by nothing else.
        return _isOutdone[step] = open.Network.RecordsSupporting(new Atom.Occurs(step))
            .Where(support => open.Available(support.Record, support.Index) > Assurance.No).All(support => IsOutdone(support.Record, step));
    }

    private bool IsOutdone(Record record, Step step) => record.Mechanism switch
    {
        Mechanism.Alternative => record.Premises.OfType<Atom.Open>().All(choice => open.Taken(choice.Choice) is null && _ways[choice.Choice].Any(way => Outdoes(way, step))),
        Mechanism.Undo => record.Premises.OfType<Atom.Occurs>().All(undone => Has(undone.Step)),
        _ => false,
    };

    private bool Outdoes(Step way, Step step) => way != step
        && IsLike(way.Operation, step.Operation) && Takes(way.Operation).High < Takes(step.Operation).High && Takes(way.Operation).Low <= Takes(step.Operation).Low
        && Both(way).All(BringsNothing);

    private static bool IsLike(Operation one, Operation other) => LeadsAsFar(one, other)
        && (one.UndoneBy is { } undoing ? other.UndoneBy is { } undoingOther && LeadsAsFar(undoing, undoingOther) : other.UndoneBy is null);

    private static bool LeadsAsFar(Operation one, Operation other) => one.Phase == other.Phase && one.Changes.Count == other.Changes.Count
        && other.Changes.All(change => one.Changes.Any(own => ReferenceEquals(own.Aspect, change.Aspect) && own.To == change.To && (change.From.Bits & ~own.From.Bits) == 0));

    private static (double Low, double High) Takes(Operation operation) =>
        (operation.Labour.Low + (operation.UndoneBy?.Labour.Low ?? 0), operation.Labour.High + (operation.UndoneBy?.Labour.High ?? 0));

    private static IEnumerable<Step> Both(Step step) => step.Operation.UndoneBy is { } undoing ? [step, new Step(undoing, step.Part)] : [step];

    // Nothing may forbid it, and what follows from it is only said.
    private bool BringsNothing(Step step) => open.Network.Forbidding(step).Count == 0 && open.Network.ForbiddingStatesOf(step.Part).Count == 0
        && open.Network.RecordsAbout(step).All(source => IsOnlySaid(source.Effect.Conclusion))
        && _followers[step].All(record => record.Mechanism == Mechanism.Undo || record.Effects.All(effect => IsOnlySaid(effect.Conclusion)));

    private static bool IsOnlySaid(Conclusion? conclusion) =>
        conclusion is Conclusion.Caution or Conclusion.Tool or Conclusion.Supply or Conclusion.Detail;
}
