namespace ProcedureRules.Language.Compiling;

/// <summary>What a cell takes: some words, or the figures between two bounds, either of which may be out.</summary>
internal readonly record struct TableCell(ulong Words, double Low, bool IsLowOut, double High, bool IsHighOut)
{
    /// <summary>Any value.</summary>
    public static readonly TableCell Any = new(ulong.MaxValue, double.NegativeInfinity, false, double.PositiveInfinity, false);

    public bool Takes(int word) => (Words >> word & 1) != 0;

    public bool Takes(double figure) =>
        (figure > Low || (figure == Low && !IsLowOut)) && (figure < High || (figure == High && !IsHighOut));
}
