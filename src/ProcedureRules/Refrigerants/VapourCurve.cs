namespace ProcedureRules.Refrigerants;

/// <summary>The pressure at which a pure substance boils, or its ice turns to vapour, at a temperature; and the reverse.</summary>
/// <remarks>
/// <para><c>p = p_r exp((T_r / T) sum n_i theta^t_i)</c>: the short form in which such curves are published. It rises with temperature, so the ends of an interval give the ends of the result.</para>
/// <para>Results are widened by what the reckoning may be off, never by what the equation may be off: that is said in words, in the basis.</para>
/// </remarks>
internal sealed class VapourCurve
{
    // The exponent stays below 20 and is good to a few units in the last place: 1e-14 of the pressure, a tenth of this.
    private const double Rounding = 1e-13;

    private readonly double _temperature;
    private readonly double _pressure;
    private readonly bool _fromZero;
    private readonly (double Factor, double Power)[] _terms;

    /// <param name="temperature">The temperature that the equation counts from, in kelvins.</param>
    /// <param name="pressure">The pressure there, in pascals.</param>
    /// <param name="lowest">The lowest temperature that it holds for.</param>
    /// <param name="highest">The highest.</param>
    /// <param name="fromZero">Whether theta is T / T_r, not 1 - T / T_r.</param>
    /// <param name="terms">Factor and power of each term.</param>
    public VapourCurve(double temperature, double pressure, double lowest, double highest, bool fromZero, params (double Factor, double Power)[] terms)
    {
        (_temperature, _pressure, _fromZero, _terms) = (temperature, pressure, fromZero, terms);
        (Lowest, Highest) = (lowest, highest);
        (LowestPressure, HighestPressure) = (Below(PressureAt(lowest)), Above(PressureAt(highest)));
    }

    public double Lowest { get; }

    public double Highest { get; }

    public double LowestPressure { get; }

    public double HighestPressure { get; }

    /// <summary>The least and the greatest pressure between two temperatures of the range.</summary>
    public (double Low, double High) Pressure(double low, double high) => (Below(PressureAt(low)), Above(PressureAt(high)));

    /// <summary>The least and the greatest temperature between two pressures of the range.</summary>
    public (double Low, double High) Temperature(double low, double high)
    {
        var from = TemperatureAt(low);
        var to = low == high ? from : TemperatureAt(high);
        return (Proven(from, -1, kelvin => Above(PressureAt(kelvin)) <= low), Proven(to, 1, kelvin => Below(PressureAt(kelvin)) >= high));
    }

    private double PressureAt(double kelvin)
    {
        var theta = _fromZero ? kelvin / _temperature : 1 - (kelvin / _temperature);
        var sum = 0.0;
        foreach (var (factor, power) in _terms) sum += factor * Math.Pow(theta, power);
        return _pressure * Math.Exp(_temperature / kelvin * sum);
    }

    // The logarithm of the pressure against the reciprocal of the temperature is nearly a straight line.
    private double TemperatureAt(double pressure) =>
        1 / Bracket.Zero(reciprocal => Math.Log(PressureAt(1 / reciprocal) / pressure), 1 / Highest, 1 / Lowest, Rounding / 10);

    // The solver's word is not taken: a bound counts once the curve itself shows that it lies on the outside.
    private double Proven(double guess, int direction, Func<double, bool> isOutside)
    {
        for (var step = guess * Rounding / 10; ; step *= 2)
        {
            var bound = guess + (direction * step);
            if (bound <= Lowest) return Lowest;
            if (bound >= Highest) return Highest;
            if (isOutside(bound)) return bound;
        }
    }

    private static double Below(double value) => value * (1 - Rounding);

    private static double Above(double value) => value * (1 + Rounding);
}
