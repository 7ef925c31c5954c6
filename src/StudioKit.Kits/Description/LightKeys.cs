using StudioKit.Kits.Quantities;
using StudioKit.Physics;
using StudioKit.Physics.Exposure;
using StudioKit.Physics.Optics;

namespace StudioKit.Kits.Description;

/// <summary>Keys that take what stands on cameras, lenses and flashes.</summary>
internal static class LightKeys
{
    public static Section<T> Stops<T>(this OpenKey<T> key, Func<T, Stops, T> set, Func<T, Stops>? get = null)
        where T : class => key.Value(Kinds.Stops, (owner, number) => set(owner, new Physics.Exposure.Stops(number)), get is null ? null : owner => get(owner).Value);

    public static Section<T> Shutter<T>(this OpenKey<T> key, Func<T, ShutterSpeed, T> set, Func<T, ShutterSpeed>? get = null)
        where T : class => key.Value(Kinds.Shutter, (owner, number) => set(owner, new ShutterSpeed(number)), get is null ? null : owner => get(owner).Seconds);

    public static Section<T> Iso<T>(this OpenKey<T> key, Func<T, IsoSpeed, T> set, Func<T, IsoSpeed>? get = null)
        where T : class => key.Value(Kinds.Iso, (owner, number) => set(owner, new IsoSpeed(number)), get is null ? null : owner => get(owner).Value);

    public static Section<T> Power<T>(this OpenKey<T> key, Func<T, FlashPower, T> set, Func<T, FlashPower>? get = null)
        where T : class => key.Value(Kinds.Power, (owner, number) => set(owner, new FlashPower(number)), get is null ? null : owner => get(owner).Fraction);

    public static Section<T> ExposureValue<T>(this OpenKey<T> key, Func<T, ExposureValue, T> set, Func<T, ExposureValue>? get = null)
        where T : class => key.Value(Kinds.ExposureValue, (owner, number) => set(owner, new Physics.Exposure.ExposureValue(number)), get is null ? null : owner => get(owner).AtIso100);

    public static Section<T> Magnification<T>(this OpenKey<T> key, Func<T, Magnification, T> set, Func<T, Magnification>? get = null)
        where T : class => key.Value(Kinds.Magnification, (owner, number) => set(owner, new Physics.Optics.Magnification(number)), get is null ? null : owner => get(owner).Value);

    public static Section<T> FNumberOrBest<T>(this OpenKey<T> key, Func<T, FNumber?, T> set, Func<T, FNumber?> get)
        where T : class => key.Value(Kinds.FNumberOrBest, (owner, choice) => set(owner, choice.FNumber is { } value ? new FNumber(value) : null), owner => new ApertureChoice(get(owner)?.Value));

    public static Section<T> GuideNumber<T>(this OpenKey<T> key, Func<T, GuideNumber, T> set)
        where T : class => key.Value(Kinds.GuideNumber, (owner, mark) => set(owner, Of(mark)), null);

    public static Section<T> GuideNumbers<T>(this OpenKey<T> key, Func<T, ValueList<GuideNumber>, T> set)
        where T : class => key.Values(Kinds.GuideNumber, (owner, marks) => set(owner, ValueList.From(marks, Of)), null);

    public static Section<T> Magnifications<T>(this OpenKey<T> key, Func<T, ValueList<Magnification>, T> set)
        where T : class => key.Values(Kinds.Magnification, (owner, numbers) => set(owner, ValueList.From(numbers, number => new Physics.Optics.Magnification(number))), null);

    public static Section<T> Apertures<T>(this OpenKey<T> key, Func<T, ApertureRange, T> set, Func<T, ApertureRange> get)
        where T : class => key.Value(Kinds.Apertures, set, get);

    public static Section<T> Isos<T>(this OpenKey<T> key, Func<T, IsoRange, T> set, Func<T, IsoRange> get)
        where T : class => key.Value(Kinds.Isos, set, get);

    public static Section<T> Lights<T>(this OpenKey<T> key, Func<T, LightRange, T> set)
        where T : class => key.Value(Kinds.Lights, set, null);

    public static Section<T> Hours<T>(this OpenKey<T> key, Func<T, ClockRange, T> set)
        where T : class => key.Value(Kinds.Hours, set, null);

    /// <summary>A guide number of what was written.</summary>
    public static GuideNumber Of(GuideNumberMark mark) =>
        new(UnitsNet.Length.FromMeters(mark.Meters), mark.Zoom is { } zoom ? OwnUnits.Length(zoom) : null);
}
