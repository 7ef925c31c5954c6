namespace StudioKit.Web.Views;

/// <summary>The rooms of the page, in the order of the work.</summary>
internal static class Rooms
{
    public static IReadOnlyList<Room> All { get; } = Enum.GetValues<Room>();

    public static string Name(Room room) => room switch
    {
        Room.Gear => "Gear",
        Room.Animals => "Animals",
        Room.Light => "Light",
        Room.Designs => "What to build",
        Room.CarryAndPrint => "Carry and print",
        Room.Field => "In the field",
        Room.TestFrames => "Test frames",
        Room.Kits => "Kits",
        _ => throw new ArgumentOutOfRangeException(nameof(room), room, "A room without a name."),
    };
}
