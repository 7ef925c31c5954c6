using System.Runtime.CompilerServices;
using StudioKit.Kits.Quantities;
using StudioKit.Physics;

namespace StudioKit.Kits.Description;

/// <summary>A key whose section, name and bounds are said; what it takes is said next.</summary>
/// <remarks>Quantities follow in <see cref="QuantityKeys"/>, what stands on cameras and flashes in <see cref="LightKeys"/>, words and sizes in <see cref="WordKeys"/>.</remarks>
internal readonly struct OpenKey<TOwner>(Section<TOwner> section, string name, string doc, ValueBounds bounds, bool isRequired)
    where TOwner : class
{
    /// <summary>It takes a value of a kind.</summary>
    /// <param name="kind">How the value is read and written.</param>
    /// <param name="set">Puts the value into the record.</param>
    /// <param name="get">Where the default stands; none where nothing stands in for the key.</param>
    public Section<TOwner> Value<T>(ValueKind<T> kind, Func<TOwner, T, TOwner> set, Func<TOwner, T>? get) =>
        section.Add(new ValueEntry<TOwner, T>(name, doc, kind, set, get, bounds, isRequired));

    /// <summary>It takes one value of a kind or a list of them.</summary>
    /// <inheritdoc cref="Value" path="/param"/>
    public Section<TOwner> Values<T>(ValueKind<T> kind, Func<TOwner, T[], TOwner> set, Func<TOwner, T[]>? get) =>
        section.Add(new ValuesEntry<TOwner, T>(name, doc, kind, set, get, bounds, refersTo: null));

    /// <summary>It takes a member of an enumeration, written with hyphens.</summary>
    /// <param name="noun">What is chosen, with its article.</param>
    /// <param name="set">Puts the member into the record.</param>
    /// <param name="get">Where the default stands.</param>
    public Section<TOwner> Choice<TMember>(string noun, Func<TOwner, TMember, TOwner> set, Func<TOwner, TMember>? get = null)
        where TMember : struct, Enum => Value(
            Kinds.Choice(typeof(TMember), noun),
            (owner, place) => set(owner, Member<TMember>(place)),
            get is null ? null : owner => Unsafe.BitCast<TMember, int>(get(owner)));

    /// <summary>It takes a member of another assembly's enumeration, for which code that is generic over it could not be compiled ahead.</summary>
    /// <param name="members">The enumeration; its members count up from nought.</param>
    /// <param name="noun">What is chosen, with its article.</param>
    /// <param name="set">Puts the member at a place into the record.</param>
    /// <param name="get">Place of the member that stands in.</param>
    public Section<TOwner> Choice(Type members, string noun, Func<TOwner, int, TOwner> set, Func<TOwner, int> get) => Value(Kinds.Choice(members, noun), set, get);

    /// <summary>It takes members of an enumeration.</summary>
    /// <param name="noun">What is chosen, with its article.</param>
    /// <param name="set">Puts the members into the record.</param>
    /// <param name="get">Where the default stands.</param>
    public Section<TOwner> Choices<TMember>(string noun, Func<TOwner, ValueList<TMember>, TOwner> set, Func<TOwner, ValueList<TMember>>? get = null)
        where TMember : struct, Enum => Values(
            Kinds.Choice(typeof(TMember), noun),
            (owner, places) => set(owner, ValueList.From(places, Member<TMember>)),
            get is null ? null : owner => [.. get(owner).Select(member => Unsafe.BitCast<TMember, int>(member))]);

    // Members are whole numbers that count up from nought as they are listed, so a place among the words is the member.
    private static TMember Member<TMember>(int place)
        where TMember : struct, Enum => Unsafe.BitCast<int, TMember>(place);
}
