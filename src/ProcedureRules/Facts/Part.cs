using ProcedureRules.Packs;

namespace ProcedureRules.Facts;

/// <summary>One part of one vehicle. Identity is by reference; a vehicle has one object a part.</summary>
public sealed class Part
{
    /// <summary>Makes a part.</summary>
    public Part(string name, Kind kind, string? text = null)
    {
        Name = name;
        Kind = kind;
        Text = text ?? (name == kind.Name ? kind.Text : name.Replace('_', ' '));
    }

    /// <summary>The name on the sheet.</summary>
    public string Name { get; }

    /// <summary>Its kind.</summary>
    public Kind Kind { get; }

    /// <summary>The words a technician reads.</summary>
    public string Text { get; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
