using System.Globalization;
using System.Text;

namespace StudioKit.Sheets.Pdf;

/// <summary>Objects that are written behind those of PDFsharp, straight into the file.</summary>
/// <param name="file">The file, standing at its end.</param>
/// <param name="firstNumber">Number of the first of them.</param>
internal sealed class AddedObjects(Stream file, int firstNumber)
{
    private readonly List<long> _offsets = [];

    /// <summary>Where each begins.</summary>
    public IReadOnlyList<long> Offsets => _offsets;

    /// <summary>Number of the next one.</summary>
    public int NextNumber => firstNumber + _offsets.Count;

    /// <summary>A string in the notation of the file (ISO 32000-1, 7.9.2.2): as it is where it is plain, else in UTF-16.</summary>
    public static string Text(string text) => text.All(letter => letter is >= ' ' and <= '~' and not '(' and not ')' and not '\\')
        ? $"({text})"
        : $"<FEFF{Convert.ToHexString(Encoding.BigEndianUnicode.GetBytes(text))}>";

    public AddedObjects Begin()
    {
        var number = NextNumber;
        _offsets.Add(file.Position);
        return Add(number).Add(" 0 obj\n");
    }

    public void End() => Add("\nendobj\n");

    public AddedObjects AddReference(int number) => Add(number).Add(" 0 R ");

    public AddedObjects Add(int number)
    {
        Span<byte> digits = stackalloc byte[12];
        number.TryFormat(digits, out var length, default, CultureInfo.InvariantCulture);
        file.Write(digits[..length]);
        return this;
    }

    public AddedObjects Add(string ascii)
    {
        Span<byte> bytes = ascii.Length <= 256 ? stackalloc byte[ascii.Length] : new byte[ascii.Length];
        Encoding.ASCII.GetBytes(ascii, bytes);
        file.Write(bytes);
        return this;
    }
}
