using System.Buffers.Binary;
using System.Text;

namespace StudioKit.Sheets.Fonts;

/// <summary>Advance widths and glyph coverage of a TrueType file; enough to lay out text, nothing more.</summary>
internal sealed class TrueTypeFont
{
    // Latin, Greek and Cyrillic: nearly all text, measured again and again while lines are broken.
    private const int Remembered = 0x530;

    private readonly CharacterMap _characters;
    private readonly double[] _remembered = new double[Remembered];
    private readonly ushort[] _advances;
    private readonly double _unitsPerEm;

    private TrueTypeFont(CharacterMap characters, ushort[] advances, double unitsPerEm, double capHeight)
    {
        _characters = characters;
        _advances = advances;
        _unitsPerEm = unitsPerEm;
        CapHeight = capHeight / unitsPerEm;
    }

    /// <summary>Height of a capital letter over the font size.</summary>
    public double CapHeight { get; }

    public static TrueTypeFont Parse(byte[] file)
    {
        var tables = Directory(file);
        var head = file.AsSpan(tables["head"]);
        var metricsCount = UInt16(file, tables["hhea"] + 34);
        var advances = new ushort[metricsCount];
        for (var i = 0; i < metricsCount; i++)
        {
            advances[i] = UInt16(file, tables["hmtx"] + (4 * i));
        }

        // The cap height stands in version 2 and later of the OS/2 table, which both bundled families have.
        var capHeight = UInt16(file, tables["OS/2"] + 88);
        var unitsPerEm = BinaryPrimitives.ReadUInt16BigEndian(head[18..]);
        return new TrueTypeFont(CharacterMap.Parse(file, tables["cmap"]), advances, unitsPerEm, capHeight);
    }

    public bool Has(Rune character) => _characters.Glyph(character.Value) != 0;

    /// <summary>Advance width over the font size; that of the empty box for a letter the font has not.</summary>
    public double Advance(Rune character)
    {
        if (character.Value >= Remembered)
        {
            return LookUp(character);
        }

        // Zero means not looked up yet; accents that truly have no width are few and only looked up more often.
        ref var advance = ref _remembered[character.Value];
        return advance != 0 ? advance : advance = LookUp(character);
    }

    private double LookUp(Rune character)
    {
        // Glyphs past the end of the table repeat its last width.
        var glyph = Math.Min(_characters.Glyph(character.Value), _advances.Length - 1);
        return _advances[glyph] / _unitsPerEm;
    }

    private static Dictionary<string, int> Directory(byte[] file)
    {
        var tables = new Dictionary<string, int>();
        var count = UInt16(file, 4);
        for (var i = 0; i < count; i++)
        {
            var entry = 12 + (16 * i);
            tables[Encoding.ASCII.GetString(file, entry, 4)] = BinaryPrimitives.ReadInt32BigEndian(file.AsSpan(entry + 8));
        }

        return tables;
    }

    private static ushort UInt16(byte[] file, int offset) => BinaryPrimitives.ReadUInt16BigEndian(file.AsSpan(offset));
}
