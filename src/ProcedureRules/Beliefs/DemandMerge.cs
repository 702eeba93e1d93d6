using ProcedureRules.Facts;
using ProcedureRules.Logic;
using ProcedureRules.Packs;
using ProcedureRules.Quantities;

namespace ProcedureRules.Beliefs;

/// <summary>
/// Merges what is demanded of one fact. All demands count: the sure ones with the end they surely ask for, the possible ones with the
/// end they may ask for.
/// </summary>
internal sealed class DemandMerge(FactDefinition fact)
{
    private double _leastSure = double.NegativeInfinity;
    private double _leastPossible = double.NegativeInfinity;
    private double _mostSure = double.PositiveInfinity;
    private double _mostPossible = double.PositiveInfinity;
    private bool _hasLeast;
    private bool _hasMost;
    private Source _low = Source.Measured;
    private Source _high = Source.Measured;

    public void Add(Quantity value, bool isAtMost, bool isSure, RankRange rank)
    {
        if (rank.Low < _low) _low = rank.Low;
        if (isSure && rank.High < _high) _high = rank.High;
        if (isAtMost)
        {
            _hasMost = true;
            _mostPossible = Math.Min(_mostPossible, value.Low);
            if (isSure) _mostSure = Math.Min(_mostSure, value.High);
        }
        else
        {
            _hasLeast = true;
            _leastPossible = Math.Max(_leastPossible, value.High);
            if (isSure) _leastSure = Math.Max(_leastSure, value.Low);
        }
    }

    public DemandLabel ToLabel()
    {
        if (fact.Type.Dimension is not { } dimension) return new(default, default, default, false, RankRange.Neutral);
        var least = _hasLeast ? Quantity.Between(_leastSure, _leastPossible, dimension) : (Quantity?)null;
        var most = _hasMost ? Quantity.Between(_mostPossible, _mostSure, dimension) : (Quantity?)null;

        // Where nothing is demanded, the least that can occur at all is enough, and the greatest is allowed.
        var floor = fact.Plausible?.Low ?? double.NegativeInfinity;
        var demanded = !_hasLeast && double.IsInfinity(floor)
            ? Quantity.Anything(dimension)
            : Quantity.Between(Math.Max(floor, _leastSure), Math.Max(floor, _leastPossible), dimension);
        var ceiling = fact.Plausible?.High ?? double.PositiveInfinity;
        var allowed = !_hasMost && double.IsInfinity(ceiling)
            ? Quantity.Anything(dimension)
            : Quantity.Between(Math.Min(ceiling, _mostPossible), Math.Min(ceiling, _mostSure), dimension);
        var isEmpty = double.IsFinite(_leastSure) && double.IsFinite(_mostSure)
            && Quantity.LessOrEqual(Quantity.Point(_leastSure, dimension), Quantity.Point(_mostSure, dimension)) == Truth.No;
        return new(demanded, allowed, new(least, most), isEmpty, new(_low, _high));
    }
}
