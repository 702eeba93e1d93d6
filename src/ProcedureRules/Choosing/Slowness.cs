using ProcedureRules.Beliefs;
using ProcedureRules.Inference;
using ProcedureRules.Language;
using ProcedureRules.Quantities;

namespace ProcedureRules.Choosing;

/// <summary>What makes a step take longer than its operation says: all factors count, one that is only possible for the upper end alone.</summary>
internal sealed class Slowness(BeliefState beliefs)
{
    private readonly List<Record> _records = [];
    private double _low = 1;
    private double _high = 1;

    /// <summary>The records that slow it down.</summary>
    public IReadOnlyList<Record> Records => _records;

    /// <summary>Counts one more factor.</summary>
    public void Add(Conclusion.Slower slower, Record record, bool isSure)
    {
        var factor = slower.Factor.Evaluate(beliefs, record.Binding).Quantity;
        if (isSure) _low *= Math.Max(1, factor.Low);
        // A factor without an upper end says only that nobody knows.
        _high *= Math.Max(1, double.IsFinite(factor.High) ? factor.High : factor.Low);
        _records.Add(record);
    }

    /// <summary>What a time comes to at least with the factors that are sure.</summary>
    public double Least(double time) => time * _low;

    /// <summary>A time with all factors in it.</summary>
    public Quantity Of(Quantity time) => Quantity.Between(time.Low * _low, time.High * Math.Max(_low, _high), time.Dimension);
}
