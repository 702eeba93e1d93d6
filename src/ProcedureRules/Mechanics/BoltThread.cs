using System.Globalization;
using System.Text.RegularExpressions;
using ProcedureRules.Quantities;

namespace ProcedureRules.Mechanics;

/// <summary>The size of a thread as it is called for in the shop: <c>3/8-16</c>, <c>M8x1.25</c>.</summary>
/// <param name="Designation">As it is called for.</param>
/// <param name="Diameter">The outer diameter.</param>
/// <param name="Pitch">The way from thread to thread.</param>
/// <param name="IsMetric">Whether it is a metric one.</param>
public sealed partial record BoltThread(string Designation, Quantity Diameter, Quantity Pitch, bool IsMetric)
{
    // ISO 261, coarse pitches in millimetres: what "M8" alone means.
    private static readonly Dictionary<double, double> CoarsePitches = new (double Diameter, double Pitch)[]
    {
        (3, 0.5), (4, 0.7), (5, 0.8), (6, 1), (7, 1), (8, 1.25), (10, 1.5), (12, 1.75), (14, 2), (16, 2), (18, 2.5), (20, 2.5), (24, 3),
    }.ToDictionary(row => row.Diameter, row => row.Pitch);

    /// <summary>Reads a size.</summary>
    /// <param name="text">Such as <c>3/8-16</c>, <c>M8x1.25</c> or, for the coarse pitch, <c>M8</c>.</param>
    /// <param name="mistake">What is wrong with it, where it is none.</param>
    /// <returns>The thread, or null.</returns>
    public static BoltThread? TryRead(string text, out string mistake)
    {
        ArgumentNullException.ThrowIfNull(text);
        mistake = "";
        var size = text.Trim();
        if (Metric().Match(size) is { Success: true } metric)
        {
            var diameter = Figure(metric.Groups[1].Value);
            if (metric.Groups[2].Success) return Made(size, diameter, Figure(metric.Groups[2].Value), "mm", isMetric: true, out mistake);
            if (CoarsePitches.TryGetValue(diameter, out var coarse)) return Made(size, diameter, coarse, "mm", isMetric: true, out mistake);
            mistake = $"'{size}': the pitch is due, such as M8x1.25";
            return null;
        }

        if (size.Length == 0 || Inch().Match(size) is not { Success: true } inch)
        {
            mistake = $"'{size}' is no thread: write such as 3/8-16, 1 1/8-7 or M8x1.25";
            return null;
        }

        if (!inch.Groups["tpi"].Success)
        {
            mistake = $"'{size}': the threads per inch are due, such as 3/8-16";
            return null;
        }

        var whole = inch.Groups["whole"].Success ? Figure(inch.Groups["whole"].Value) : 0;
        var part = inch.Groups["under"].Success ? Figure(inch.Groups["over"].Value) / Figure(inch.Groups["under"].Value) : 0;
        return Made(size, whole + part, 1 / Figure(inch.Groups["tpi"].Value), "in", isMetric: false, out mistake);
    }

    private static BoltThread? Made(string designation, double diameter, double pitch, string unit, bool isMetric, out string mistake)
    {
        mistake = $"'{designation}': such a thread cannot be";
        if (!double.IsFinite(diameter) || !double.IsFinite(pitch)) return null;
        var thread = new BoltThread(designation, Quantity.Of(diameter, unit), Quantity.Of(pitch, unit), isMetric);
        return Fastening.StressArea(isMetric, thread.Diameter, thread.Pitch).IsBounded ? thread : null;
    }

    private static double Figure(string text) => double.Parse(text, NumberStyles.Float, CultureInfo.InvariantCulture);

    [GeneratedRegex(@"^[Mm]\s*(\d{1,3}(?:\.\d{1,3})?)(?:\s*[xX*]\s*(\d{1,2}(?:\.\d{1,3})?))?$", RegexOptions.CultureInvariant)]
    private static partial Regex Metric();

    [GeneratedRegex(@"^(?:(?<whole>\d{1,2}(?:\.\d{1,4})?)(?:[\s-](?=\d+/))?)?(?:(?<over>\d{1,2})/(?<under>\d{1,2}))?(?:\s*-\s*(?<tpi>\d{1,2}))?(?:\s*UN[CF])?$", RegexOptions.CultureInvariant | RegexOptions.IgnoreCase)]
    private static partial Regex Inch();
}
