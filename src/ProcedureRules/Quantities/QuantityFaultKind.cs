namespace ProcedureRules.Quantities;

/// <summary>What is wrong with a text that should be a quantity.</summary>
public enum QuantityFaultKind
{
    /// <summary>There is no text.</summary>
    Empty,

    /// <summary>A number was expected and something else stands there.</summary>
    NotANumber,

    /// <summary>The word after the number is no unit.</summary>
    UnknownUnit,

    /// <summary>The unit means different things to different people and must be made plain.</summary>
    AmbiguousUnit,

    /// <summary>A unit is due and there is none.</summary>
    MissingUnit,

    /// <summary>A comma where a decimal point is meant, or a comma between thousands.</summary>
    Comma,

    /// <summary>A range that is not written with two dots.</summary>
    RangeMark,

    /// <summary>A range whose first end is above its second.</summary>
    BackwardRange,

    /// <summary>Two parts of one quantity are of different dimensions.</summary>
    MixedDimensions,

    /// <summary>A fraction that is none: a zero below, spaces around the stroke, a whole part with an improper fraction.</summary>
    BadFraction,

    /// <summary>Units in a row that do not go together.</summary>
    BadCompound,

    /// <summary>A tolerance that is negative or cannot be applied.</summary>
    BadTolerance,

    /// <summary>"about" where a share of the value means nothing.</summary>
    BadAbout,

    /// <summary>More digits or a greater magnitude than a quantity can hold.</summary>
    TooLarge,

    /// <summary>The text goes on after the quantity.</summary>
    TrailingText,

    /// <summary>A quantity of another dimension than the one that is due.</summary>
    WrongDimension,
}
