using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace Bakehouse.Migrations.Sqlite.Migrations
{
    /// <inheritdoc />
    public partial class ByHand : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "chores",
                columns: table => new
                {
                    Seq = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Id = table.Column<string>(type: "TEXT", nullable: false),
                    Version = table.Column<int>(type: "INTEGER", nullable: false),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Document = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_chores", x => x.Seq);
                });

            migrationBuilder.CreateTable(
                name: "pins",
                columns: table => new
                {
                    Seq = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    Move = table.Column<string>(type: "TEXT", nullable: false),
                    Step = table.Column<string>(type: "TEXT", nullable: false),
                    Order = table.Column<string>(type: "TEXT", nullable: false),
                    Start = table.Column<long>(type: "INTEGER", nullable: false),
                    People = table.Column<string>(type: "TEXT", nullable: false),
                    Machine = table.Column<string>(type: "TEXT", nullable: true),
                    Format = table.Column<int>(type: "INTEGER", nullable: false),
                    Before = table.Column<string>(type: "TEXT", nullable: false),
                    Person = table.Column<string>(type: "TEXT", nullable: false),
                    Device = table.Column<string>(type: "TEXT", nullable: false),
                    Written = table.Column<long>(type: "INTEGER", nullable: false),
                    UndonePerson = table.Column<string>(type: "TEXT", nullable: true),
                    Undone = table.Column<long>(type: "INTEGER", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_pins", x => x.Seq);
                });

            migrationBuilder.CreateIndex(
                name: "IX_chores_Id_Version",
                table: "chores",
                columns: new[] { "Id", "Version" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_pins_Move",
                table: "pins",
                column: "Move",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_pins_Order",
                table: "pins",
                column: "Order");

            migrationBuilder.CreateIndex(
                name: "IX_pins_Step",
                table: "pins",
                column: "Step",
                unique: true,
                filter: "\"Undone\" IS NULL");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "chores");

            migrationBuilder.DropTable(
                name: "pins");
        }
    }
}
