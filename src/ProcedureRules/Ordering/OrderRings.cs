namespace ProcedureRules.Ordering;

/// <summary>Finds a ring of order edges whose conditions can hold together. One whose conditions exclude each other is harmless.</summary>
internal sealed class OrderRings
{
    private readonly World _world;
    private readonly List<OrderEdge> _path = [];
    private readonly Dictionary<int, ulong> _guards = [];
    private Work _start = null!;
    private int _left = 20_000;

    private OrderRings(World world) => _world = world;

    /// <summary>The edges of a ring among the steps that have to occur, or null.</summary>
    public static IReadOnlyList<OrderEdge>? Find(World world)
    {
        var rings = new OrderRings(world);
        foreach (var work in world.Works)
        {
            rings._start = work;
            if (Occurs(work) && rings.Walk(work)) return rings._path;
        }
        return null;
    }

    // Each ring is found from its first step by name only.
    private bool Walk(Work work)
    {
        foreach (var edge in work.Behind)
        {
            if (edge.Second.Index < _start.Index || !Occurs(edge.Second) || _left-- <= 0) continue;
            if (_path.Any(other => ReferenceEquals(other.First, edge.Second)) && !ReferenceEquals(edge.Second, _start)) continue;
            var before = new Dictionary<int, ulong>(_guards);
            _path.Add(edge);
            if (CanHoldToo(edge) && (ReferenceEquals(edge.Second, _start) || Walk(edge.Second))) return true;
            _path.RemoveAt(_path.Count - 1);
            _guards.Clear();
            foreach (var (variable, states) in before) _guards[variable] = states;
        }
        return false;
    }

    private bool CanHoldToo(OrderEdge edge)
    {
        foreach (var guard in edge.Guards)
        {
            var states = _guards.GetValueOrDefault(guard.Variable, ulong.MaxValue) & guard.States.Bits;
            if (states == 0) return false;
            _guards[guard.Variable] = states;
        }
        return true;
    }

    private static bool Occurs(Work work) => work.IsDue || (work.Undoes is { IsDue: true, IsReturned: true });
}
