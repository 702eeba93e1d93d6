namespace ProcedureRules.Inference;

/// <summary>One reason to conclude something: what the rule engine activates and fires. Identity is by reference.</summary>
internal abstract class Instance
{
    /// <summary>What it concludes; of a rule's instance null until it has fired.</summary>
    public Record? Record { get; set; }

    /// <summary>Whether everything it was matched from still holds.</summary>
    public bool IsAlive { get; set; } = true;

    /// <summary>Whether the rule engine was given it: alive, and the states now allow it.</summary>
    public bool IsShown { get; set; }

    /// <summary>Whether it stands among the fired ones.</summary>
    public bool IsListed { get; set; }

    /// <summary>The nodes of the atoms it concludes, since it fired.</summary>
    public IReadOnlyList<Node> Concluded { get; set; } = [];

    /// <summary>For the ring sweep: the sweep that last visited it, and how many premises were still missing then.</summary>
    public int Sweep { get; set; }

    public int Missing { get; set; }

    /// <summary>How many premises it was matched from.</summary>
    public abstract int PremiseCount { get; }
}
