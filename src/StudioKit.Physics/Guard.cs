using System.Runtime.CompilerServices;

namespace StudioKit.Physics;

/// <summary>Checks arguments at the door of a calculation; a value that is not a number fails every check.</summary>
public static class Guard
{
    /// <summary>Lets a finite number above zero pass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative or not finite.</exception>
    public static double Positive(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite and greater than zero.");

    /// <summary>Lets a finite number of zero or more pass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    public static double NonNegative(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= 0
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite and not negative.");

    /// <summary>Lets any finite number pass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is infinite or not a number.</exception>
    public static double Finite(double value, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value)
            ? value
            : throw new ArgumentOutOfRangeException(name, value, "Must be finite.");

    /// <summary>Lets a finite number within closed bounds pass.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is outside the bounds or not finite.</exception>
    public static double Between(
        double value, double lowest, double highest, [CallerArgumentExpression(nameof(value))] string? name = null) =>
        double.IsFinite(value) && value >= lowest && value <= highest
            ? value
            : throw new ArgumentOutOfRangeException(name, value, FormattableString.Invariant($"Must lie between {lowest} and {highest}."));
}
