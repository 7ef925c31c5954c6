using System.Diagnostics.CodeAnalysis;

namespace StudioKit.Field;

/// <summary>A value, or the reasons why there is none. A sound value may still come with diagnostics worth printing.</summary>
/// <typeparam name="T">What was asked for.</typeparam>
public sealed class FieldResult<T>
    where T : class
{
    private FieldResult(T? value, IReadOnlyList<FieldDiagnostic> diagnostics)
    {
        Value = value;
        Diagnostics = diagnostics;
    }

    /// <summary>The value; none where it could not be had.</summary>
    public T? Value { get; }

    /// <summary>Everything found wrong or doubtful.</summary>
    public IReadOnlyList<FieldDiagnostic> Diagnostics { get; }

    /// <summary>Whether there is a value.</summary>
    [MemberNotNullWhen(true, nameof(Value))]
    public bool IsSound => Value is not null;

    /// <summary>Wraps a value.</summary>
    public static implicit operator FieldResult<T>(T value) => new(value, []);

    /// <summary>Wraps a refusal.</summary>
    public static implicit operator FieldResult<T>(FieldDiagnostic diagnostic) => new(null, [diagnostic]);

    internal static FieldResult<T> Sound(T value, IReadOnlyList<FieldDiagnostic> notes) => new(value, notes);

    internal static FieldResult<T> Refused(IReadOnlyList<FieldDiagnostic> diagnostics) => new(null, diagnostics);
}
