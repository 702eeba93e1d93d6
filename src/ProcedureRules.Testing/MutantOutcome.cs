namespace ProcedureRules.Testing;

/// <summary>What came of a mutant.</summary>
public enum MutantOutcome
{
    /// <summary>A scenario noticed it.</summary>
    Killed,

    /// <summary>Scenarios in which its rule matches ran as if nothing were changed.</summary>
    Survived,

    /// <summary>Its rule matches in no scenario.</summary>
    Unreached,
}
