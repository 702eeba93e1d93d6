namespace ProcedureRules.Language;

/// <summary>A structural predicate by sort and name: the key under which the matcher finds the rules that read it.</summary>
public readonly record struct Predicate(PredicateSort Sort, string Name = "", string Detail = "");
