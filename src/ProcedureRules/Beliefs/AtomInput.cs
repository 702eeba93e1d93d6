using ProcedureRules.Facts;
using ProcedureRules.Logic;

namespace ProcedureRules.Beliefs;

/// <summary>What is put into an atom from outside: statements, jobs, choices.</summary>
internal readonly record struct AtomInput(Assurance Level, Source Source)
{
    /// <summary>What statements come to.</summary>
    public static AtomInput Of(Truth truth, Source source) => new(
        truth switch { Truth.Yes => Assurance.Sure, Truth.Unknown => Assurance.Provisional, _ => Assurance.No },
        source);
}
