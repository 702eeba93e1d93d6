using ProcedureRules.Facts;
using ProcedureRules.Packs;

namespace ProcedureRules.Inference;

/// <summary>What an atom gives to the matcher. Only predicates that some rule reads are made.</summary>
internal sealed class GroundMaker(RuleIndex index)
{
    private readonly Dictionary<Kind, List<Node>> _partsByKind = [];
    private readonly Dictionary<Kind, List<(Node Step, int Predicate)>> _stepsByKind = [];

    /// <summary>Whether an atom gives ground facts to rules that read it.</summary>
    public static bool Joins(Atom atom) => atom is Atom.Exists or Atom.Related or Atom.Asked or Atom.Occurs or Atom.Given;

    /// <summary>The ground facts of an atom that has come to hold; each has to be stored before the next is asked for.</summary>
    public IEnumerable<Ground> From(Node node) => node.Atom switch
    {
        Atom.Exists exists => FromPart(node, exists.Part),
        Atom.Related related => FromPredicate(new(Language.PredicateSort.Related, related.Relation.Name), related.A, related.B, node),
        Atom.Asked asked => FromPredicate(new(Language.PredicateSort.Job, asked.Request.Job.Name), asked.Request.On, null, node),
        Atom.Occurs occurs => FromStep(node, occurs.Step),
        Atom.Given => FromPredicate(RuleIndex.Always, null, null, node),
        _ => [],
    };

    /// <summary>The atom holds no more.</summary>
    public void Forget(Node node)
    {
        if (node.Atom is Atom.Exists(var part))
        {
            foreach (var kind in part.Kind.Lineage()) _partsByKind.GetValueOrDefault(kind)?.Remove(node);
        }
        else if (node.Atom is Atom.Occurs(var step))
        {
            foreach (var (predicate, kind) in index.Of(step.Operation).Others) _stepsByKind[kind].Remove((node, predicate));
        }
    }

    private IEnumerable<Ground> FromPredicate(Language.Predicate predicate, object? first, object? second, Node node)
    {
        var number = index.NumberOf(predicate);
        if (number >= 0) yield return new Ground(number, first, second, node);
    }

    private IEnumerable<Ground> FromPart(Node node, Part part)
    {
        foreach (var predicate in index.OfKind(part.Kind)) yield return new Ground(predicate, part, null, node);
        foreach (var kind in part.Kind.Lineage())
        {
            if (!index.TouchedOrMoved.Contains(kind)) continue;
            ListOf(_partsByKind, kind).Add(node);
            foreach (var (step, predicate) in _stepsByKind.GetValueOrDefault(kind, []))
                if (Beside(step, predicate, node) is { } ground) yield return ground;
        }
    }

    private IEnumerable<Ground> FromStep(Node node, Language.Step step)
    {
        var profile = index.Of(step.Operation);
        foreach (var predicate in profile.OfStep) yield return new Ground(predicate, step, null, node);
        foreach (var predicate in profile.OfStepAndPart) yield return new Ground(predicate, step, step.Part, node);
        foreach (var (predicate, kind) in profile.Others)
        {
            ListOf(_stepsByKind, kind).Add((node, predicate));
            foreach (var part in _partsByKind.GetValueOrDefault(kind, []))
                if (Beside(node, predicate, part) is { } ground) yield return ground;
        }
    }

    /// <summary>A step and a part that its operation touches or moves by kind; null where they are already known to.</summary>
    private static Ground? Beside(Node stepNode, int predicate, Node partNode)
    {
        var step = ((Atom.Occurs)stepNode.Atom).Step;
        var part = ((Atom.Exists)partNode.Atom).Part;
        return stepNode.Grounds.Any(ground => ground.Predicate == predicate && ReferenceEquals(ground.Second, part))
            ? null
            : new Ground(predicate, step, part, stepNode) { Beside = partNode };
    }

    private static List<T> ListOf<T>(Dictionary<Kind, List<T>> lists, Kind kind)
    {
        if (!lists.TryGetValue(kind, out var list)) lists.Add(kind, list = []);
        return list;
    }
}
