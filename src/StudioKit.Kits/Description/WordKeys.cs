using StudioKit.Kits.Quantities;

namespace StudioKit.Kits.Description;

/// <summary>Keys that take words, plain numbers and sizes.</summary>
internal static class WordKeys
{
    public static Section<T> Name<T>(this OpenKey<T> key, Func<T, string, T> set, Func<T, string>? get = null)
        where T : class => key.Value(Kinds.Name, set, get);

    public static Section<T> Distribution<T>(this Section<T> section, string key, string doc, Func<T, Lighting.LightDistribution, T> set)
        where T : class => section.Add(new DistributionEntry<T>(key, doc, set));

    public static Section<T> Sentence<T>(this OpenKey<T> key, Func<T, string, T> set, Func<T, string>? get = null)
        where T : class => key.Value(Kinds.Sentence, set, get);

    public static Section<T> RadioGroup<T>(this OpenKey<T> key, Func<T, string, T> set, Func<T, string>? get = null)
        where T : class => key.Value(Kinds.RadioGroup, set, get);

    public static Section<T> Currency<T>(this OpenKey<T> key, Func<T, string, T> set, Func<T, string>? get = null)
        where T : class => key.Value(Kinds.Currency, set, get);

    public static Section<T> YesNo<T>(this OpenKey<T> key, Func<T, bool, T> set, Func<T, bool>? get = null)
        where T : class => key.Value(Kinds.YesNo, set, get);

    public static Section<T> Count<T>(this OpenKey<T> key, Func<T, int, T> set, Func<T, int>? get = null)
        where T : class => key.Value(Kinds.Count, set, get);

    public static Section<T> Ratio<T>(this OpenKey<T> key, Func<T, double, T> set, Func<T, double>? get = null)
        where T : class => key.Value(Kinds.Ratio, set, get);

    public static Section<T> Factor<T>(this OpenKey<T> key, Func<T, double, T> set, Func<T, double>? get = null)
        where T : class => key.Value(Kinds.Factor, set, get);

    public static Section<T> Plain<T>(this OpenKey<T> key, Func<T, double, T> set, Func<T, double>? get = null)
        where T : class => key.Value(Kinds.Plain, set, get);

    public static Section<T> Size<T>(this OpenKey<T> key, Func<T, Size, T> set, Func<T, Size>? get = null)
        where T : class => key.Value(Kinds.Size, set, get);

    public static Section<T> SensorSize<T>(this OpenKey<T> key, Func<T, Size, T> set, Func<T, Size>? get = null)
        where T : class => key.Value(Kinds.SensorSize, set, get);

    public static Section<T> SheetSize<T>(this OpenKey<T> key, Func<T, Size, T> set, Func<T, Size>? get = null)
        where T : class => key.Value(Kinds.SheetSize, set, get);

    public static Section<T> Box<T>(this OpenKey<T> key, Func<T, Box, T> set, Func<T, Box>? get = null)
        where T : class => key.Value(Kinds.Box, set, get);

    public static Section<T> Pixels<T>(this OpenKey<T> key, Func<T, PixelCount, T> set, Func<T, PixelCount>? get = null)
        where T : class => key.Value(Kinds.Pixels, set, get);

    public static Section<T> Price<T>(this OpenKey<T> key, Func<T, decimal, T> set, Func<T, decimal>? get = null)
        where T : class => key.Value(Kinds.Price, (owner, number) => set(owner, (decimal)number), get is null ? null : owner => (double)get(owner));
}
