#include <catch2/catch.hpp>
#include <imgui.h>

// Debian's Dear ImGui is a static library without a CMake package; this holds
// third_party/cmake/FindImGui.cmake.
TEST_CASE("Dear ImGui, as packaged, builds a frame without a window") {
    ImGui::CreateContext();
    ImGuiIO& io = ImGui::GetIO();
    io.IniFilename = nullptr;
    io.DisplaySize = {1280, 800};
    unsigned char* pixels = nullptr;
    int width = 0;
    int height = 0;
    io.Fonts->GetTexDataAsRGBA32(&pixels, &width, &height);
    // A new window is measured in its first frame and seen in its second.
    for (int frame = 0; frame < 2; ++frame) {
        ImGui::NewFrame();
        ImGui::Begin("Room");
        ImGui::Text("3600 x 2400 mm");
        ImGui::End();
        ImGui::Render();
    }
    CHECK(ImGui::GetDrawData()->TotalVtxCount > 0);
    CHECK(width > 0);
    ImGui::DestroyContext();
}
