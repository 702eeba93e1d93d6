using ProcedureRules.Quantities;

namespace ProcedureRules.Testing;

/// <summary>On what two versions of packs are compared beside their scenarios, and how plans are told.</summary>
public sealed record ComparisonOptions
{
    /// <summary>How many generated vehicles are planned for each job.</summary>
    public int Generated { get; init; }

    /// <summary>What the generated vehicles hang on; the same seed gives the same ones.</summary>
    public int Seed { get; init; } = 1;

    /// <summary>The units of figures in what is told of plans.</summary>
    public UnitSystem Units { get; init; } = UnitSystem.Us;
}
