using ProcedureRules.Facts;
using ProcedureRules.Inference;

namespace ProcedureRules.Testing.Mutating;

/// <summary>What of a moment a change of a rule concerns.</summary>
internal interface IConsequences
{
    /// <summary>Whether it concerns a record, by its place.</summary>
    bool Has(int record);

    /// <summary>Whether it concerns an atom.</summary>
    bool Has(Atom atom);

    /// <summary>Whether it concerns a fact, or what is demanded of it.</summary>
    bool Has(FactKey fact);

    /// <summary>Whether it concerns what is found of a cause.</summary>
    /// <param name="cause">The cause, by its name.</param>
    /// <param name="findings">The records that speak of it.</param>
    bool Has(string cause, IReadOnlyList<int> findings);
}
