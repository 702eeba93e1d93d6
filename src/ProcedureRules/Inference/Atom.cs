using ProcedureRules.Facts;
using ProcedureRules.Language;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>A ground statement that records conclude and rest on. Equality by content; inference keeps one object for each.</summary>
public abstract record Atom
{
    private Atom() { }

    /// <summary>The vehicle has the part.</summary>
    public sealed record Exists(Part Part) : Atom;

    /// <summary>A relation holds between two parts.</summary>
    public sealed record Related(Relation Relation, Part A, Part B) : Atom;

    /// <summary>A job is asked for.</summary>
    public sealed record Asked(JobRequest Request) : Atom;

    /// <summary>A kind of step occurs.</summary>
    public sealed record Occurs(Step Step) : Atom;

    /// <summary>An aspect is wanted in one of some states at some moment.</summary>
    public sealed record Wanted(Part Part, Aspect Aspect, StateSet States) : Atom;

    /// <summary>A choice has to be made.</summary>
    public sealed record Open(ChoiceKey Choice) : Atom;

    /// <summary>An option of a choice is the one taken: an input that planning decides.</summary>
    public sealed record Chosen(ChoiceKey Choice, int Option) : Atom;

    /// <summary>An aspect is not in its normal state now. Steers what is matched; no record rests on it.</summary>
    internal sealed record Arrived(Part Part, Aspect Aspect, int State) : Atom;

    /// <summary>What always holds: rules without any condition that binds are matched by it. No record rests on it.</summary>
    internal sealed record Given : Atom
    {
        public static Given Always { get; } = new();
    }
}
