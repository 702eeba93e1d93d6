namespace ProcedureRules.Packs;

/// <summary>On which way a need of an operation holds: taking off, putting back, or both.</summary>
public enum Way
{
    /// <summary>For the step and for the step that undoes it.</summary>
    Both,

    /// <summary>Only for the step itself.</summary>
    Off,

    /// <summary>Only for the step that undoes it.</summary>
    On,
}
