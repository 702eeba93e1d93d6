using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Logic;

namespace ProcedureRules.Choosing;

/// <summary>One way of a choice.</summary>
/// <param name="Index">Its index.</param>
/// <param name="Rank">Its rank; lower comes first.</param>
/// <param name="Records">The records that rest on it.</param>
/// <param name="Option">The option as written, for a <c>one_of</c>.</param>
/// <param name="Reads">The nodes that its <c>if</c> reads.</param>
internal sealed record ChoiceOption(int Index, int Rank, IReadOnlyList<Record> Records, Option? Option, IReadOnlyList<int> Reads)
{
    /// <summary>The steps that it takes.</summary>
    public IEnumerable<Step> Steps => Records.SelectMany(record => record.Effects).Select(effect => effect.Atom).OfType<Atom.Occurs>().Select(atom => atom.Step);

    /// <summary>Whether it is open, by its <c>if</c>.</summary>
    public Truth IsOpen(BeliefState beliefs, Binding? binding) =>
        Option?.If is { } condition && binding is not null ? condition.Evaluate(beliefs, binding) : Truth.Yes;
}
