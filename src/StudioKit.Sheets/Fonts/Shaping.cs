namespace StudioKit.Sheets.Fonts;

/// <summary>Scripts whose letters change shape, order or place by their neighbours: set letter by letter, as we set, they are misspelt.</summary>
/// <remarks>By the blocks of the Unicode Standard, version 15: Hebrew and all other scripts from right to left, those of India and of South-East Asia, Mongolian; and what lies beyond the basic plane, which no bundled font has.</remarks>
internal static class Shaping
{
    private static readonly (int First, int Last)[] Blocks =
    [
        (0x0590, 0x08FF), (0x0900, 0x0DFF), (0x0E00, 0x0EFF), (0x0F00, 0x0FFF), (0x1000, 0x109F), (0x1700, 0x18AF), (0x1900, 0x1AAF), (0x1B00, 0x1C7F), (0x1CD0, 0x1CFF),
        (0xA800, 0xA82F), (0xA840, 0xA95F), (0xA980, 0xAADF), (0xABC0, 0xABFF), (0xFB1D, 0xFDFF), (0xFE70, 0xFEFE),
    ];

    public static bool Needs(string element)
    {
        foreach (var rune in element.EnumerateRunes())
        {
            foreach (var (first, last) in Blocks)
            {
                if (rune.Value >= first && rune.Value <= last)
                {
                    return true;
                }
            }
        }

        return false;
    }
}
