namespace ProcedureRules.Inference;

/// <summary>The one object of a session for an atom: how often it is supported, and what was made of it.</summary>
internal sealed class Node(Atom atom)
{
    public Atom Atom { get; } = atom;

    /// <summary>How many inputs and instances conclude it; it holds while there is one.</summary>
    public int Supports { get; set; }

    /// <summary>Taken back by the ring sweep although instances still conclude it; they fall with it, and the node is forgotten.</summary>
    public bool IsWithdrawn { get; set; }

    /// <summary>The ground facts it gives to the matcher.</summary>
    public List<Ground> Grounds { get; } = [];

    /// <summary>What the mechanisms conclude from it.</summary>
    public List<MechanismInstance> Mechanisms { get; } = [];

    /// <summary>The last sweep that reached it.</summary>
    public int Sweep { get; set; }
}
