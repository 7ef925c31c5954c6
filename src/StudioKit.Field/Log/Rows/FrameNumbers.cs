using System.Globalization;
using System.Text.RegularExpressions;

namespace StudioKit.Field.Log.Rows;

/// <summary>Frame numbers as they are written by hand, and the file names that they stand for.</summary>
/// <remarks>Parted by semicolons: a number, a run such as <c>0412-0419</c>, or a file name.</remarks>
public sealed partial class FrameNumbers
{
    private const int MostInARun = 1000;
    private readonly string _before;
    private readonly string _after;
    private readonly int _digits;

    private FrameNumbers(string before, int digits, string after) => (_before, _digits, _after) = (before, digits, after);

    /// <summary>Four digits and the ending of a JPEG.</summary>
    public static FrameNumbers Usual { get; } = new("", 4, ".jpg");

    /// <summary>Reads a pattern of file names.</summary>
    /// <param name="pattern">File name with one run of number signs where the number stands, e.g. <c>fen-####.jpg</c>.</param>
    /// <returns>The pattern, or why it is none.</returns>
    public static FieldResult<FrameNumbers> OfPattern(string pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        var found = Pattern().Match(pattern);
        return found.Success && pattern.AsSpan().IndexOfAny('/', '\\', ';') < 0
            ? new FrameNumbers(found.Groups["before"].Value, found.Groups["digits"].Length, found.Groups["after"].Value)
            : new FieldDiagnostic("FLD498", pattern, "A pattern of file names has one run of number signs and no folder.", "Write it as fen-####.jpg.");
    }

    /// <summary>The file names of a cell.</summary>
    /// <returns>The names, or what is wrong with the cell in words.</returns>
    internal (IReadOnlyList<string> Names, string Problem) Read(string cell)
    {
        var names = new List<string>();
        foreach (var part in cell.Split(';', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries))
        {
            var run = Run().Match(part);
            if (!run.Success)
            {
                names.Add(part);
                continue;
            }

            var first = int.Parse(run.Groups["first"].Value, CultureInfo.InvariantCulture);
            var last = run.Groups["last"].Success ? int.Parse(run.Groups["last"].Value, CultureInfo.InvariantCulture) : first;
            if (last < first || last - first >= MostInARun)
            {
                return ([], $"'{part}' runs from {first} to {last}; write a run forwards and in full, such as 0412-0419, and one past the camera's turn of numbers in two.");
            }

            names.AddRange(Enumerable.Range(first, last - first + 1).Select(Name));
        }

        return (names, "");
    }

    /// <summary>File names as a cell; none where one of them cannot be written so that it is read again.</summary>
    internal string? Write(IReadOnlyList<string> names)
    {
        if (names.Any(name => NumberOf(name) is null && (Run().IsMatch(name) || name.Contains(';', StringComparison.Ordinal) || name.Trim() != name || name.Length == 0)))
        {
            return null;
        }

        var parts = new List<string>();
        for (var i = 0; i < names.Count;)
        {
            var end = i;
            while (end + 1 < names.Count && end + 1 - i < MostInARun && NumberOf(names[end]) is { } number && NumberOf(names[end + 1]) == number + 1)
            {
                end++;
            }

            parts.Add(NumberOf(names[i]) is null ? names[i] : end == i ? Digits(names[i]) : $"{Digits(names[i])}-{Digits(names[end])}");
            i = end + 1;
        }

        return string.Join("; ", parts);
    }

    private string Name(int number) => _before + number.ToString(CultureInfo.InvariantCulture).PadLeft(_digits, '0') + _after;

    private string Digits(string name) => name[_before.Length..(name.Length - _after.Length)];

    // Only what the number alone gives back.
    private int? NumberOf(string name) =>
        name.Length > _before.Length + _after.Length && name.StartsWith(_before, StringComparison.Ordinal) && name.EndsWith(_after, StringComparison.Ordinal)
        && int.TryParse(Digits(name), NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number < 100_000_000 && Name(number) == name
            ? number
            : null;

    [GeneratedRegex(@"^(?<before>[^#]*)(?<digits>#{1,8})(?<after>[^#]*)$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Pattern();

    [GeneratedRegex(@"^(?<first>\d{1,8})(\s*-\s*(?<last>\d{1,8}))?$", RegexOptions.ExplicitCapture | RegexOptions.ECMAScript, 1000)]
    private static partial Regex Run();
}
