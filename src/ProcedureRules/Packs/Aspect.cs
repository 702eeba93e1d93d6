using ProcedureRules.Diagnostics;

namespace ProcedureRules.Packs;

/// <summary>One small state machine of a kind of part: its place, its joint, its charge.</summary>
public sealed class Aspect
{
    /// <summary>The kind that has it; special kinds inherit it.</summary>
    public required Kind Kind { get; init; }

    /// <summary>The name behind the dot.</summary>
    public required string Name { get; init; }

    /// <summary>The states by name; a state is its index here.</summary>
    public required IReadOnlyList<string> States { get; init; }

    /// <summary>The state of a whole vehicle, index into <see cref="States"/>; a job ends there unless it says otherwise.</summary>
    public required int Normal { get; init; }

    /// <summary>A mark (an inspection, a renewed unit): nothing undoes it and no job has to return it.</summary>
    public bool IsMark { get; init; }

    /// <summary>What must hold while a state lasts: state index to raw state conditions, in which <c>it</c> is the part.</summary>
    public IReadOnlyDictionary<int, IReadOnlyList<Snippet>> While { get; init; } = new Dictionary<int, IReadOnlyList<Snippet>>();

    /// <summary>The pack that defines it.</summary>
    public string Pack { get; init; } = "";

    /// <summary>Where it is defined.</summary>
    public SourceSpan Span { get; init; }

    /// <summary>The index of a state, or -1.</summary>
    public int IndexOf(string state)
    {
        for (var i = 0; i < States.Count; i++)
            if (States[i] == state) return i;
        return -1;
    }

    /// <inheritdoc/>
    public override string ToString() => $"{Kind.Name}.{Name}";
}
