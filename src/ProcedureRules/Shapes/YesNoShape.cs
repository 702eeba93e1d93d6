namespace ProcedureRules.Shapes;

/// <summary><c>yes</c> or <c>no</c>; <c>true</c> and <c>false</c> are read alike.</summary>
internal sealed class YesNoShape : Shape;
