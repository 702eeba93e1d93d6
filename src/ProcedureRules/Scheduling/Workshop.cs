namespace ProcedureRules.Scheduling;

/// <summary>Who works where and when: what a schedule has to fit into.</summary>
public sealed record Workshop
{
    /// <summary>The most technicians that a schedule reckons with.</summary>
    public const int MostTechnicians = 20;

    private readonly int _technicians = 1;

    /// <summary>One technician, Monday to Friday, eight to five; nobody works beside a step that meets an energy.</summary>
    public static Workshop Usual { get; } = new();

    /// <summary>What it is, one line.</summary>
    public string Title { get; init; } = "Usual hours";

    /// <summary>How many technicians there are, 1 to <see cref="MostTechnicians"/>.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Fewer or more.</exception>
    public int Technicians
    {
        get => _technicians;
        init
        {
            ArgumentOutOfRangeException.ThrowIfLessThan(value, 1);
            ArgumentOutOfRangeException.ThrowIfGreaterThan(value, MostTechnicians);
            _technicians = value;
        }
    }

    /// <summary>When it is open.</summary>
    public OpeningHours Hours { get; init; } = OpeningHours.Usual;

    /// <summary>How many people fit into a place at a time; a place that is not named holds all. A step that takes more hands has the place to itself.</summary>
    public IReadOnlyDictionary<string, int> Places { get; init; } = new Dictionary<string, int>();

    /// <summary>The energies beside which nobody else works; null: any.</summary>
    public IReadOnlySet<string>? Alone { get; init; }
}
