namespace StudioKit.Kits.Quantities;

/// <summary>What came of reading one text: a value, or a problem with a hint.</summary>
/// <param name="Value">The value; meaningless where there is a problem.</param>
/// <param name="Problem">A sentence that says what is wrong; none where the text was read.</param>
/// <param name="Hint">What would be accepted instead.</param>
internal readonly record struct Reading<T>(T Value, string? Problem, string? Hint)
{
    public bool IsGood => Problem is null;

    public static Reading<T> Good(T value) => new(value, null, null);

    public static Reading<T> Bad(string problem, string? hint) => new(default!, problem, hint);

    public Reading<TOther> Then<TOther>(Func<T, TOther> convert) =>
        IsGood ? Reading<TOther>.Good(convert(Value)) : Reading<TOther>.Bad(Problem!, Hint);

    public Reading<TOther> Then<TOther>(Func<T, Reading<TOther>> convert) =>
        IsGood ? convert(Value) : Reading<TOther>.Bad(Problem!, Hint);
}
